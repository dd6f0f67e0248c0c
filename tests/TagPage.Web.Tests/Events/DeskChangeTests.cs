using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A racket at the desk is wanted otherwise, or taken beside another: what a helper’s tablet asks first.</summary>
public sealed class DeskChangeTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Waiting_racket_is_changed_and_whom_that_makes_late_is_shown_before_it_is_kept()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn(neededBy: Fairground.At(10, 30));
        fair.TakeIn(neededBy: Fairground.At(10, 30));
        fair.TakeIn(neededBy: Fairground.At(14));
        var tablet = await fair.Tablet();
        var form = await tablet.Open((await tablet.Open(fair.Home + "/entry/3")).Document.QuerySelectorAll<IHtmlAnchorElement>("main a").Single(a => a.TextContent == "Change it").GetAttribute("href")!);
        Assert.Equal("14:00", form.Document.QuerySelector<IHtmlInputElement>("[name='Input.NeededAt']")!.Value);

        var asked = await tablet.Send(form, ("Input.NeededAt", "10:29"), ("Input.MainsTension", "55"));
        Assert.Contains("Number 2, promised for 10:30, would be ready at 11:00", asked.Main, StringComparison.Ordinal);
        Assert.Equal((52m, Fairground.At(14)), (fair.Board.Of(3)!.MainsTension, fair.Board.Of(3)!.Promised));

        var kept = await tablet.Open((await Fairground.Press(tablet, asked, "Promise 11:00")).Location!);
        Assert.Contains("Number 3 is changed: promised for 11:00.", kept.Main, StringComparison.Ordinal);
        Assert.Equal((55m, Fairground.At(10, 29), Fairground.At(11)), (fair.Board.Of(3)!.MainsTension, fair.Board.Of(3)!.NeededBy, fair.Board.Of(3)!.Promised));
    }

    [Fact]
    public async Task Second_of_two_tablets_is_told_and_its_next_press_counts()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn();
        var (one, other) = (await fair.Tablet(), await fair.Tablet());
        var (first, second) = (await one.Open(fair.Home + "/entry/1/change"), await other.Open(fair.Home + "/entry/1/change"));

        await one.Send(first, ("Input.Team", "Sund"));
        var told = await other.Send(second, ("Input.Team", "Fjell"));

        Assert.Contains("Somebody else saved this record", told.Main, StringComparison.Ordinal);
        Assert.Equal("Sund", fair.Board.Of(1)!.Team);
        await other.Send(told);
        Assert.Equal("Fjell", fair.Board.Of(1)!.Team);
    }

    [Fact]
    public async Task Racket_taken_meanwhile_is_not_changed()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn();
        var tablet = await fair.Tablet();
        var form = await tablet.Open(fair.Home + "/entry/1/change");
        Fairground.Done(_shop.Get<DeskMoveStore>().Take(Who.Shop, fair.Id, 1, fair.Bram));

        var told = await tablet.Send(form, ("Input.Team", "Sund"));

        Assert.Contains("Somebody was quicker: Bram has number 1 on the machine.", told.Main, StringComparison.Ordinal);
        Assert.Equal("Norden", fair.Board.Of(1)!.Team);
    }

    [Fact]
    public async Task On_court_at_intake_says_first_what_it_is_promised_for_and_whom_it_makes_late()
    {
        var fair = new Fairground(_shop);
        var kind = _shop.Records.Kind();
        fair.TakeIn(neededBy: Fairground.At(10, 30));
        fair.TakeIn(neededBy: Fairground.At(10, 30));
        var tablet = await fair.Tablet();
        var form = await tablet.Open(fair.Home + "/in/visitor");
        Assert.Contains("On court now: ready by 10:30, and it makes these late:", form.Main, StringComparison.Ordinal);

        var asked = await tablet.Send(form, ("Input.Visitor.Name", "Edda Brink"), ("Input.MainsTension", "52"), ("Input.MainsId", $"{kind}"), ("Input.OnCourt", "true"));
        Assert.Contains("It would be ready by 10:30 and make another late. Choose below.", asked.Errors);
        Assert.Equal(2, fair.Board.Entries.Count);

        await Fairground.Press(tablet, asked, "Promise 10:30");
        Assert.Equal((true, Fairground.At(10, 30), 2), (fair.Board.Of(3)!.OnCourt, fair.Board.Of(3)!.Promised, Assert.Single(fair.Board.ToTell).Number));
    }

    [Fact]
    public async Task Form_sent_twice_is_answered_as_the_first_time_and_takes_one_racket_in()
    {
        var fair = new Fairground(_shop);
        var kind = _shop.Records.Kind();
        var tablet = await fair.Tablet();
        var form = await tablet.Open(fair.Home + "/in/visitor");
        (string, string)[] tove = [("Input.Visitor.Name", "Tove Alling"), ("Input.MainsTension", "52"), ("Input.MainsId", $"{kind}"), ("Input.NeededAt", "10:30")];

        await tablet.Send(form, tove);
        var again = await tablet.Send(form, tove);

        Assert.Equal(fair.Home + "/in", again.Location);
        Assert.Contains("Number 1: promised for 10:30", (await tablet.Open(again.Location!)).Main, StringComparison.Ordinal);
        Assert.Single(fair.Board.Entries);
    }

    [Fact]
    public async Task Second_racket_on_a_machine_is_asked_about_and_not_blocked()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn();
        fair.TakeIn("Ilse Marrow");
        Fairground.Done(_shop.Get<DeskMoveStore>().Take(Who.Shop, fair.Id, 1, fair.Bram));
        var tablet = await fair.Tablet();

        var asked = await Fairground.Press(tablet, await tablet.Open(fair.Home + "/entry/2"), "Bram takes it");
        Assert.Contains("Number 1 is still on the machine of Bram.", asked.Main, StringComparison.Ordinal);
        Assert.Null(fair.Board.Of(2)!.TechnicianId);

        await Fairground.Press(tablet, asked, "Take number 2 as well");
        Assert.Equal(fair.Bram, fair.Board.Of(2)!.TechnicianId);
    }

    [Fact]
    public async Task Every_page_of_the_desk_says_from_what_time_it_is_and_what_follows_the_event_is_marked()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn();
        var tablet = await fair.Tablet();

        foreach (var path in (string[])["", "/in", "/in?q=Tove", "/in/visitor", "/out", "/shift", "/left", "/entry/1", "/entry/1/change", $"/technician/{fair.Bram}"])
            Assert.Contains("As it was at 10:00.", (await tablet.Open(fair.Home + path)).Main, StringComparison.Ordinal);
        foreach (var path in (string[])["/in?q=Tove", "/in/visitor", "/entry/1", "/entry/1/change", "/left"])
        {
            var region = (await tablet.Open(fair.Home + path)).Document.QuerySelector("[data-live]")!;
            Assert.Null(region.QuerySelector("input:not([type=hidden]), select, textarea"));
        }
    }

    [Theory]
    [InlineData("X-Live", true)]
    [InlineData("X-Other", false)]
    public async Task Page_that_reads_itself_again_does_not_use_up_what_the_next_one_says(string header, bool isStillSaid)
    {
        var fair = new Fairground(_shop);
        fair.TakeIn();
        var tablet = await fair.Tablet();
        var done = await Fairground.Press(tablet, await tablet.Open(fair.Home + "/entry/1"), "Pull it forward");
        using var read = new HttpRequestMessage(HttpMethod.Get, new Uri(fair.Home + "/in/visitor", UriKind.Relative));
        read.Headers.Add(header, "read");

        (await tablet.Client.SendAsync(read, TestContext.Current.CancellationToken)).EnsureSuccessStatusCode();

        Assert.Equal(isStillSaid, (await tablet.Open(done.Location!)).Main.Contains("Number 1 is pulled forward.", StringComparison.Ordinal));
    }
}
