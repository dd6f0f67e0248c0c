using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>When the shop is open, who reads it, and what may be promised. Today is Wednesday, 25 November 2026.</summary>
public sealed class OpeningTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly (long Client, long Player, long Racket, Core.Tags.TagCode Tag, long Job) _family;

    public OpeningTests()
    {
        _shop.Records.Shop();
        _family = _shop.Records.Family();
    }

    public void Dispose() => _shop.Dispose();

    private string NewJob => $"/shop/jobs/new?racket={_family.Racket}";

    /// <summary>Tuesday to Thursday, with a break at noon, and Saturday morning.</summary>
    private void Opens() => _shop.Records.Change("""
        INSERT INTO opening_span (weekday, opens_at, closes_at)
        VALUES (2, 600, 780), (2, 840, 1080), (3, 600, 780), (3, 840, 1080), (4, 600, 780), (4, 840, 1080), (6, 540, 780)
        """);

    private void Closes(string from, string to, string note = "") =>
        _shop.Records.Change("INSERT INTO closed_days (from_on, to_on, note) VALUES (@from, @to, @note)", new { from, to, note });

    private static string? Proposed(WebPage form) => form.Document.QuerySelector("[name='Input.PromisedFor']")!.GetAttribute("value");

    private JobRow Job(WebPage answer) => _shop.Get<JobStore>().Get(Who.Shop, long.Parse(answer.Location!["/shop/jobs/".Length..], System.Globalization.CultureInfo.InvariantCulture))!;

    [Fact]
    public async Task Owner_types_the_week_and_strangers_read_it_in_their_language()
    {
        var owner = _shop.Owner();

        await owner.Send(await owner.Open("/shop/settings/hours"), ("Input.Tuesday", "10-13, 14.00–18:00"), ("Input.Wednesday", "10:00 - 13:00; 14-18"), ("Input.Saturday", "9–13"));

        var form = await owner.Open("/shop/settings/hours");
        Assert.Equal("10:00–13:00, 14:00–18:00", form.Document.QuerySelector("[name='Input.Wednesday']")!.GetAttribute("value"));
        foreach (var path in new[] { "/", $"/t/{_family.Tag}" })
        {
            Assert.Contains("Tuesday–Wednesday: 10:00–13:00, 14:00–18:00\nSaturday: 9:00–13:00\nMonday, Thursday–Friday, Sunday: closed", (await _shop.Stranger().Open(path)).Main, StringComparison.Ordinal);
            Assert.Contains("Dienstag–Mittwoch: 10:00–13:00, 14:00–18:00", (await _shop.Stranger().Open(path + "?lang=de")).Main, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("18-10")]
    [InlineData("10-13, 12-18")]
    [InlineData("10-25")]
    [InlineData("10:70-12")]
    [InlineData("mornings")]
    public async Task Times_that_are_none_are_refused_at_their_day(string typed)
    {
        Opens();
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/settings/hours"), ("Input.Monday", "10-12"), ("Input.Friday", typed));

        Assert.StartsWith("Enter times like 10:00–13:00", Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.NotNull(answer.Document.QuerySelector("[name='Input.Friday'][aria-invalid]"));
        Assert.Equal((0, 7), (_shop.Records.Count("opening_span", "weekday = 1"), _shop.Records.Count("opening_span")));
    }

    [Fact]
    public async Task Second_of_two_people_saving_the_week_is_told()
    {
        var (runa, idris) = (_shop.Owner(), _shop.Owner());
        var form = await idris.Open("/shop/settings/hours");
        await runa.Send(await runa.Open("/shop/settings/hours"), ("Input.Monday", "9-10"));

        Assert.Contains("Somebody else saved", (await idris.Send(form, ("Input.Monday", "11-12"))).Main, StringComparison.Ordinal);
        Assert.Equal(540, _shop.Get<ShopStore>().Get().Opening.Week[0].OpensAt);
    }

    [Fact]
    public async Task Closed_days_are_added_read_by_everybody_before_they_come_and_taken_back()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/closed"), ("Input.FromOn", "2026-12-24"), ("Input.ToOn", "2027-01-02"), ("Input.Note", "away <b>skiing</b>"));
        await owner.Send(await owner.Open("/shop/settings/closed"), ("Input.FromOn", "2026-11-30"));

        var page = await _shop.Stranger().Open("/");
        Assert.Contains("Closed on 30 Nov 2026", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("24 Dec", page.Main, StringComparison.Ordinal);
        _shop.Clock.Advance(TimeSpan.FromDays(6));
        page = await _shop.Stranger().Open("/");
        Assert.Contains("Closed from 24 Dec 2026 to 2 Jan 2027: away <b>skiing</b>", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("30 Nov", page.Main, StringComparison.Ordinal);

        var hours = await owner.Open("/shop/settings/hours");
        await owner.Send(hours, hours.Form("/shop/settings/hours?handler=Remove"));
        Assert.Equal("2026-11-30", _shop.Records.Text("SELECT from_on FROM closed_days"));
    }

    [Theory]
    [InlineData("", "", "Enter the first day.")]
    [InlineData("2026-12-24", "2026-12-23", "The last day is before the first. Correct one of them.")]
    [InlineData("2026-11-24", "", "Check the year: enter days that are not over yet, at most three years ahead and at most a year in a row.")]
    [InlineData("2036-12-24", "", "Check the year: enter days that are not over yet, at most three years ahead and at most a year in a row.")]
    [InlineData("2026-12-24", "2028-01-01", "Check the year: enter days that are not over yet, at most three years ahead and at most a year in a row.")]
    public async Task Closed_days_that_cannot_be_are_refused(string from, string to, string sentence)
    {
        var owner = _shop.Owner();

        Assert.Equal(sentence, Assert.Single((await owner.Send(await owner.Open("/shop/settings/closed"), ("Input.FromOn", from), ("Input.ToOn", to))).Errors));
        Assert.Equal(0, _shop.Records.Count("closed_days"));
    }

    [Fact]
    public async Task Proposed_day_is_the_next_open_one()
    {
        var owner = _shop.Owner();
        Assert.Equal("2026-11-27", Proposed(await owner.Open(NewJob)));
        Opens();
        Assert.Equal("2026-11-28", Proposed(await owner.Open(NewJob)));
        Closes("2026-11-28", "2026-12-01");
        Assert.Equal("2026-12-02", Proposed(await owner.Open(NewJob)));

        var form = await owner.Open(NewJob);
        Assert.Equal(new DateOnly(2026, 12, 2), Job(await owner.Send(form, form.Form($"{NewJob}&handler=Same"))).PromisedFor);
    }

    [Fact]
    public async Task Day_promised_on_a_closed_one_is_asked_about_and_kept_when_ticked()
    {
        Opens();
        Closes("2026-11-28", "2026-12-01", "tournament");
        var owner = _shop.Owner();

        var asked = await owner.Send(await owner.Open(NewJob), ("Input.PromisedFor", "2026-11-27"));
        Assert.Equal("The shop is closed on Friday, 27 Nov 2026. It is open again on Wednesday, 2 Dec 2026. Promise another day, or tick below to keep it.", Assert.Single(asked.Errors));
        asked = await owner.Send(asked, ("Input.PromisedFor", "2026-11-28"));
        Assert.StartsWith("The shop is closed on Saturday, 28 Nov 2026 (tournament).", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("job"));

        var saved = await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("#Input_Confirmed")!.GetAttribute("value")!));
        Assert.Equal(new DateOnly(2026, 11, 28), Job(saved).PromisedFor);

        var edit = $"/shop/jobs/edit/{Job(saved).Id}";
        Assert.NotNull((await owner.Send(await owner.Open(edit), ("Input.Note", "blue grommets"))).Location);
        Assert.Single((await owner.Send(await owner.Open(edit), ("Input.PromisedFor", "2026-11-30"))).Errors);
        Assert.NotNull((await owner.Send(await owner.Open(edit), ("Input.PromisedFor", "2026-12-03"))).Location);
    }

    [Fact]
    public async Task Ticket_bench_and_opening_hours_name_a_promise_that_falls_on_days_closed_since()
    {
        var owner = _shop.Owner();
        var ticket = Job(await owner.Send(await owner.Open(NewJob), ("Input.PromisedFor", "2026-11-30")));
        Assert.DoesNotContain("closed", (await owner.Open($"/shop/jobs/{ticket.Id}")).Main, StringComparison.OrdinalIgnoreCase);

        var saved = await owner.Send(await owner.Open("/shop/settings/closed"), ("Input.FromOn", "2026-11-28"), ("Input.ToOn", "2026-12-01"), ("Input.Note", "tournament"));
        var hours = await owner.Open(saved.Location!);

        Assert.Contains("1 open ticket is promised for a closed day", hours.Document.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains($"Ticket {ticket.Ticket}: {ticket.Player}, racket 1, promised for Monday, 30 Nov 2026", hours.Main, StringComparison.Ordinal);
        Assert.NotNull(hours.Document.QuerySelector($"a[href='/shop/jobs/{ticket.Id}']"));
        var page = await owner.Open($"/shop/jobs/{ticket.Id}");
        Assert.Contains("The shop is closed on Monday, 30 Nov 2026 (tournament). It is open again on Wednesday, 2 Dec 2026.", page.Main, StringComparison.Ordinal);
        Assert.Contains("promised for Monday, 30 Nov 2026, when the shop is closed", (await owner.Open("/shop")).Main, StringComparison.Ordinal);

        await owner.Send(await owner.Open($"/shop/jobs/edit/{ticket.Id}"), ("Input.PromisedFor", "2026-12-02"));

        Assert.DoesNotContain("The shop is closed on", (await owner.Open($"/shop/jobs/{ticket.Id}")).Main, StringComparison.Ordinal);
        Assert.DoesNotContain("when the shop is closed", (await owner.Open("/shop")).Main, StringComparison.Ordinal);
        Assert.Null((await owner.Open("/shop/settings/hours")).Document.QuerySelector("#promised"));
    }

    [Fact]
    public async Task Change_of_a_promise_to_a_closed_day_is_asked_about_and_an_old_one_stands_at_the_ticket_only()
    {
        Opens();
        var owner = _shop.Owner();
        _shop.Records.Change("UPDATE job SET state = 'Waiting', strung_on = NULL, collected_on = NULL, paid_on = NULL, promised_for = '2026-11-29' WHERE id = @Job", new { _family.Job });
        var edit = $"/shop/jobs/edit/{_family.Job}";

        Assert.NotNull((await owner.Send(await owner.Open(edit), ("Input.Note", "blue grommets"))).Location);
        Assert.Contains("The shop is closed on Sunday, 29 Nov 2026.", (await owner.Open($"/shop/jobs/{_family.Job}")).Main, StringComparison.Ordinal);
        Assert.Contains("The shop is closed on Monday, 30 Nov 2026.", Assert.Single((await owner.Send(await owner.Open(edit), ("Input.PromisedFor", "2026-11-30"))).Errors), StringComparison.Ordinal);
        Assert.Equal("2026-11-29", _shop.Records.Text("SELECT promised_for FROM job WHERE promised_for IS NOT NULL"));
    }
}
