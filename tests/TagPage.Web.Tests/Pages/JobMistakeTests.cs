using System.Net;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Tickets that were written for the wrong racket, or at all.</summary>
public sealed class JobMistakeTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly (long Client, long Player, long Racket, Core.Tags.TagCode Tag, long Job) _family;
    private readonly long _second, _bos;

    public JobMistakeTests()
    {
        _shop.Records.Shop();
        _family = _shop.Records.Family();
        _second = _shop.Records.Racket(_family.Player, number: 2, frame: "Pellmore Meadow 100");
        _bos = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Ewan Lockyer"), "Bo Lockyer"));
    }

    public void Dispose() => _shop.Dispose();

    private JobRow Job => _shop.Get<JobStore>().Get(Who.Shop, _family.Job)!;

    private static IEnumerable<string> Said(WebPage page) => page.Document.QuerySelectorAll(".errors li").Select(line => line.TextContent);

    private string Due(long racket) => _shop.Records.Text($"SELECT COALESCE(due_on, 'none') FROM racket WHERE id = {racket}");

    [Fact]
    public async Task Ticket_goes_to_the_players_other_racket_and_both_dates_follow()
    {
        var owner = _shop.Owner();
        var due = Due(_family.Racket);
        Assert.Equal((false, "none"), (due == "none", Due(_second)));
        var ticket = await owner.Open($"/shop/jobs/{_family.Job}");

        var choice = await owner.Open(ticket.Document.QuerySelector($"a[href='/shop/jobs/move/{_family.Job}']")!.GetAttribute("href")!);
        var form = await owner.Open(choice.Document.QuerySelector($"main a[href$='to={_second}']")!.GetAttribute("href")!);
        Assert.Contains("readings, price and payment go with the ticket", form.Main, StringComparison.Ordinal);
        var moved = await owner.Send(form);

        Assert.Equal($"/shop/jobs/{_family.Job}", moved.Location);
        Assert.Equal((_second, "none", due), (Job.RacketId, Due(_family.Racket), Due(_second)));
    }

    [Fact]
    public async Task Another_players_racket_is_found_by_name_and_asked_about_first()
    {
        var owner = _shop.Owner();
        var found = await owner.Open($"/shop/jobs/move/{_family.Job}?q=lockyer");
        var form = await owner.Open(found.Document.QuerySelector($"main a[href$='to={_bos}']")!.GetAttribute("href")!);

        var asked = await owner.Send(form);
        Assert.StartsWith("That racket is Bo Lockyer’s.", Assert.Single(Said(asked)), StringComparison.Ordinal);
        Assert.Equal(_family.Racket, Job.RacketId);

        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("#Input_Confirmed")!.GetAttribute("value")!));
        Assert.Equal((_bos, "none"), (Job.RacketId, Due(_family.Racket)));
    }

    [Fact]
    public async Task Racket_with_an_open_ticket_and_one_of_a_sport_with_other_tensions_are_asked_about()
    {
        var (open, _) = (_shop.Records.Job(_family.Racket), _shop.Records.Job(_second));
        _shop.Records.Change("UPDATE racket SET sport = 'Badminton' WHERE id = @_second", new { _second });
        var owner = _shop.Owner();

        var asked = await owner.Send(await owner.Open($"/shop/jobs/move/{open}?to={_second}"));

        Assert.Contains(Said(asked), e => e.Contains("on the bench already", StringComparison.Ordinal));
        Assert.Contains(Said(asked), e => e.Contains("badminton is mostly strung between", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Racket_that_is_not_there_is_not_found_and_the_same_one_refused()
    {
        var owner = _shop.Owner();
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get($"/shop/jobs/move/{_family.Job}?to=99")).StatusCode);
        Assert.Equal("This ticket is already for that racket. Choose another one.",
            Assert.Single(Said(await owner.Send(await owner.Open($"/shop/jobs/move/{_family.Job}?to={_family.Racket}")))));
        Assert.Equal(1, Job.Version);
    }

    [Fact]
    public async Task Deleting_is_not_offered_where_it_would_be_refused_and_the_ticket_says_why()
    {
        var waiting = _shop.Records.Job(_family.Racket);
        _shop.Records.Change("""
            INSERT INTO instrument (name, scale) VALUES ('Shop gauge', 'Stiffness');
            INSERT INTO reading (job_id, first, taken_on, instrument_id, value) SELECT @waiting, 1, '2026-11-02', MAX(id), 62 FROM instrument
            """, new { waiting });

        var page = await _shop.Owner().Open($"/shop/jobs/{waiting}");

        Assert.Null(page.Document.QuerySelector("a[href*=delete]"));
        Assert.Contains("It cannot be deleted. There is a reading on this ticket.", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ticket_written_by_mistake_is_deleted_and_a_strung_one_is_not()
    {
        var waiting = _shop.Records.Job(_family.Racket);
        var owner = _shop.Owner();
        var page = await owner.Open((await owner.Open($"/shop/jobs/{waiting}")).Document.QuerySelector($"a[href='/shop/jobs/delete/{waiting}']")!.GetAttribute("href")!);

        Assert.Equal($"/shop/rackets/{_family.Racket}", (await owner.Send(page)).Location);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get($"/shop/jobs/{waiting}")).StatusCode);

        Assert.Null((await owner.Open($"/shop/jobs/{_family.Job}")).Document.QuerySelector("a[href*=delete]"));
        var refused = await owner.Send(await owner.Open($"/shop/jobs/delete/{_family.Job}"));
        Assert.StartsWith("These strings went in on 1 Nov 2026", Assert.Single(Said(refused)), StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("job"));
    }
}
