using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class JobMoveTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _job;

    public JobMoveTests() => _job = _shop.Records.Job(_shop.Records.Family().Racket);

    private JobRow Job => _shop.Get<JobStore>().Get(Who.Shop, _job)!;

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_takes_a_ticket_over_the_bench_with_the_buttons_found_on_its_pages()
    {
        var owner = _shop.Owner();
        var ticket = await owner.Open($"/shop/jobs/{_job}");
        Assert.Contains("52 lb", ticket.Main, StringComparison.Ordinal);

        await owner.Send(ticket, ticket.Document.QuerySelector<IHtmlFormElement>($"form[action='/shop/jobs/start/{_job}']")!);
        Assert.Equal(JobState.OnMachine, Job.State);
        var strung = await owner.Send(await owner.Open($"/shop/jobs/strung/{_job}"), ("Input.StrungBy", "Runa"));
        Assert.Equal($"/shop/jobs/{_job}", strung.Location);
        Assert.Equal((JobState.Strung, TestShop.Today), (Job.State, Job.StrungOn!.Value));
        var collected = await owner.Send(await owner.Open($"/shop/jobs/collect/{_job}"), ("Input.How", "Cash"));
        Assert.Equal("/shop", collected.Location);
        Assert.Equal((JobState.Collected, TestShop.Today), (Job.State, Job.PaidOn!.Value));
    }

    [Fact]
    public async Task Strung_and_print_is_one_press_that_ends_at_the_label()
    {
        var owner = _shop.Owner();
        var page = await owner.Open($"/shop/jobs/strung/{_job}");
        var button = Assert.Single(page.Document.QuerySelectorAll("main form button"), b => b.TextContent == "Strung, print label");

        var answer = await owner.Send(page, (button.GetAttribute("name")!, button.GetAttribute("value")!));
        while (answer.Location is { } next)
            answer = await owner.Open(next);

        Assert.Equal(JobState.Strung, Job.State);
        Assert.Equal("application/pdf", answer.Response.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task Where_no_label_can_be_made_the_press_ends_at_the_page_that_says_why()
    {
        _shop.Records.Change("UPDATE racket SET label_tape = 'black', label_ink = 'black'");
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/jobs/strung/{_job}"), ("Print", "true"));
        while (answer.Location is { } next)
            answer = await owner.Open(next);

        Assert.Equal(JobState.Strung, Job.State);
        Assert.Equal("Print a label", answer.Document.QuerySelector("h1")!.TextContent);
        Assert.Contains("is strung", answer.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Second_person_to_move_a_ticket_is_told_where_it_is()
    {
        var (runa, idris) = (_shop.Owner(), _shop.Owner());
        var form = await idris.Open($"/shop/jobs/strung/{_job}");
        await runa.Send(await runa.Open($"/shop/jobs/strung/{_job}"), ("Input.StrungBy", "Runa"));

        var told = await idris.Send(form, ("Input.StrungBy", "Idris"));

        Assert.Contains("is now strung, so nothing was changed", told.Main, StringComparison.Ordinal);
        Assert.Equal("Runa", Job.StrungBy);
    }

    [Fact]
    public async Task Undo_beside_the_status_line_takes_each_move_back_in_one_press()
    {
        var owner = _shop.Owner();
        foreach (var (verb, before) in new[] { ("start", JobState.Waiting), ("strung", JobState.OnMachine), ("collect", JobState.Strung) })
        {
            var next = await Moved(verb);
            Assert.Equal("Undo", next.Document.QuerySelector("[role=status] button")!.TextContent);

            var undone = await owner.Open((await owner.Send(next, Undo(next))).Location!);

            Assert.Equal(before, Job.State);
            Assert.Contains("again.", undone.Document.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
            await Moved(verb);
        }

        async Task<WebPage> Moved(string verb) => await owner.Open((await owner.Send(await owner.Open($"/shop/jobs/{verb}/{_job}"))).Location!);
        static AngleSharp.Html.Dom.IHtmlFormElement Undo(WebPage page) => page.Document.QuerySelector<AngleSharp.Html.Dom.IHtmlFormElement>("[role=status] form")!;
    }

    [Fact]
    public async Task Undo_pressed_after_the_ticket_moved_on_changes_nothing_and_says_where_it_is()
    {
        var owner = _shop.Owner();
        var ticket = await owner.Open((await owner.Send(await owner.Open($"/shop/jobs/start/{_job}"))).Location!);
        await owner.Send(await owner.Open($"/shop/jobs/strung/{_job}"));
        var before = Job;

        var told = await owner.Send(ticket, ticket.Document.QuerySelector<AngleSharp.Html.Dom.IHtmlFormElement>("[role=status] form")!);

        Assert.Contains("is now strung, so nothing was changed", told.Main, StringComparison.Ordinal);
        Assert.Equal(before, Job);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await owner.Get("/shop/jobs/undo?from=Strung&job=999")).StatusCode);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await owner.Get("/shop/jobs/undo")).StatusCode);
    }

    [Fact]
    public async Task Last_move_can_be_taken_back_on_the_bench_too()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/jobs/start/{_job}"));
        await owner.Open($"/shop/jobs/{_job}");

        var bench = await owner.Open("/shop");
        Assert.Contains($"Last: ticket {Job.Ticket} on the machine", bench.Main, StringComparison.Ordinal);
        await owner.Send(bench, bench.Document.QuerySelector<AngleSharp.Html.Dom.IHtmlFormElement>("form.last")!);

        Assert.Equal(JobState.Waiting, Job.State);
        Assert.DoesNotContain("Last:", (await owner.Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_two_tablets_with_the_same_bench_one_starts_the_racket_and_the_other_is_told()
    {
        var (left, right) = (_shop.Owner(), _shop.Owner());
        var (leftBench, rightBench) = (await left.Open("/shop"), await right.Open("/shop"));

        await left.Send(leftBench, leftBench.Form($"/shop/jobs/start/{_job}"));
        var told = await right.Send(rightBench, rightBench.Form($"/shop/jobs/start/{_job}"));

        Assert.Contains($"Ticket {Job.Ticket} is now on the machine, so nothing was changed", told.Main, StringComparison.Ordinal);
        Assert.Equal((JobState.OnMachine, 2), (Job.State, Job.Version));
    }

    [Fact]
    public async Task Looking_at_the_pages_of_the_moves_moves_nothing()
    {
        var (owner, before) = (_shop.Owner(), Job);

        foreach (var verb in new[] { "start", "strung", "collect", "cancel", "back", "paid", "edit" })
            await owner.Open($"/shop/jobs/{verb}/{_job}");

        Assert.Equal(before, Job);
    }

    [Fact]
    public async Task Stranger_moves_nothing()
    {
        var (stranger, before) = (_shop.Stranger(), Job);

        foreach (var verb in new[] { "start", "strung", "collect", "cancel", "back", "paid", "edit" })
            Assert.False((await stranger.Client.PostAsync(new Uri($"/shop/jobs/{verb}/{_job}", UriKind.Relative), null, TestContext.Current.CancellationToken)).IsSuccessStatusCode);

        Assert.Equal(before, Job);
    }

    [Theory]
    [InlineData("Input.StrungOn", "2026-11-26", "This day is in the future; today is 25 Nov 2026.")]
    [InlineData("Input.StrungOn", "2026-11-01", "Enter a day on or after the day it came in, 24 Nov 2026.")]
    [InlineData("Input.StrungOn", "", "Enter the day of stringing.")]
    [InlineData("Input.Reading", "62", "Choose the instrument of the reading.")]
    public async Task Impossible_stringing_is_refused_at_its_field(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/jobs/strung/{_job}"), (field, typed));

        Assert.Contains(sentence, answer.Errors);
        Assert.Equal(JobState.Waiting, Job.State);
    }

    [Fact]
    public async Task Cancelling_asks_first()
    {
        var owner = _shop.Owner();
        var asks = await owner.Open($"/shop/jobs/cancel/{_job}");
        Assert.Equal(JobState.Waiting, Job.State);

        await owner.Send(asks);

        Assert.Equal(JobState.Cancelled, Job.State);
    }
}
