using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>What a desk promises, asks about and names in time, as a helper’s tablet shows it.</summary>
public sealed class DeskPromiseTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Wish_that_breaks_a_promise_is_asked_about_before_it_is_given()
    {
        var fair = new Fairground(_shop);
        var kind = _shop.Records.Kind();
        fair.TakeIn(neededBy: Fairground.At(10, 30));
        fair.TakeIn(neededBy: Fairground.At(10, 30));
        var tablet = await fair.Tablet();

        var asked = await tablet.Send(await tablet.Open(fair.Home + "/in/visitor"),
            ("Input.Visitor.Name", "Edda Brink"), ("Input.MainsTension", "52"), ("Input.MainsId", $"{kind}"), ("Input.NeededAt", "10:29"));

        Assert.Contains("Ready by 11:00 makes nobody late", asked.Main, StringComparison.Ordinal);
        Assert.Contains("Number 2, promised for 10:30, would be ready at 11:00", asked.Main, StringComparison.Ordinal);
        Assert.Equal(2, fair.Board.Entries.Count);

        await tablet.Send(asked, ("Answer", "later"));
        Assert.Equal(Fairground.At(11), fair.Board.Of(3)!.Promised);
        Assert.Empty(fair.Board.ToTell);
    }

    [Fact]
    public async Task Before_a_racket_is_pulled_forward_its_page_says_whom_that_makes_late()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn(neededBy: Fairground.At(10, 30));
        fair.TakeIn(neededBy: Fairground.At(10, 30));
        fair.TakeIn();
        var tablet = await fair.Tablet();

        var page = await tablet.Open(fair.Home + "/entry/3");
        Assert.Contains("Number 2, promised for 10:30, would be ready at 11:00", page.Main, StringComparison.Ordinal);
        var after = await tablet.Open((await Fairground.Press(tablet, page, "Pull it forward")).Location!);

        Assert.Contains("Promises that had to move", after.Main, StringComparison.Ordinal);
        await Fairground.Press(tablet, after, "Told");
        Assert.DoesNotContain("Promises that had to move", (await tablet.Open(fair.Home)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Form_says_what_could_be_promised_before_anything_is_typed()
    {
        var fair = new Fairground(_shop);
        for (var racket = 0; racket < 2; racket++)
            fair.TakeIn(neededBy: Fairground.At(10, 30));

        var form = await (await fair.Tablet()).Open(fair.Home + "/in/visitor");

        Assert.Contains("Leave empty to be ready by 11:00", form.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_could_be_promised_follows_what_is_typed_on_the_form()
    {
        var fair = new Fairground(_shop);
        for (var racket = 0; racket < 2; racket++)
            fair.TakeIn(neededBy: Fairground.At(10, 30));
        Fairground.Done(_shop.Get<DeskMoveStore>().Take(Who.Shop, fair.Id, 1, fair.Runa));
        Fairground.Done(_shop.Get<DeskMoveStore>().Take(Who.Shop, fair.Id, 2, fair.Bram));
        fair.TakeIn(neededBy: Fairground.At(11));
        var tablet = await fair.Tablet();

        Assert.Contains("Leave empty to be ready by 11:00", (await Asked(tablet, "")).Main, StringComparison.Ordinal);
        Assert.Contains("Leave empty to be ready by 11:20", (await Asked(tablet, "Minutes=50")).Main, StringComparison.Ordinal);
        Assert.Contains("Leave empty to be ready by 11:30", (await Asked(tablet, $"KeptFor={fair.Runa}")).Main, StringComparison.Ordinal);
        Assert.Contains("Leave empty to be ready by 12:30", (await Asked(tablet, "NotBeforeAt=12:00")).Main, StringComparison.Ordinal);
        Assert.Contains("12:00 can be promised", (await Asked(tablet, "NeededAt=12:00")).Main, StringComparison.Ordinal);
        var late = (await Asked(tablet, $"NeededAt=10:40&KeptFor={fair.Runa}")).Main;
        Assert.Contains("10:40 cannot be promised; 11:30 can.", late, StringComparison.Ordinal);
        foreach (var rubbish in (string[])["Minutes=-30", "Minutes=many", "NeededAt=25:99", "KeptFor=77x"])
            Assert.Contains("Leave empty to be ready by 11:00", (await Asked(tablet, rubbish)).Main, StringComparison.Ordinal);

        Task<WebPage> Asked(Visitor visitor, string typed) => visitor.Open(fair.Home + "/in/visitor" + (typed.Length > 0 ? "?typed." + typed.Replace("&", "&typed.", StringComparison.Ordinal) : ""));
    }

    [Fact]
    public async Task Form_that_is_shown_again_still_says_what_could_be_promised_for_what_was_typed()
    {
        var fair = new Fairground(_shop);
        var kind = _shop.Records.Kind();
        var tablet = await fair.Tablet();

        var asked = await tablet.Send(await tablet.Open(fair.Home + "/in/visitor"),
            ("Input.Visitor.Name", "Tove"), ("Input.MainsTension", "52"), ("Input.MainsId", $"{kind}"), ("Input.Minutes", "50"), ("Input.NeededAt", "10:20"));

        Assert.Contains("Leave empty to be ready by 10:50", asked.Main, StringComparison.Ordinal);
        Assert.Contains("10:20 cannot be promised; 10:50 can.", asked.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_that_reaches_its_match_after_all_is_named_until_its_owner_was_told()
    {
        var fair = new Fairground(_shop);
        foreach (var _ in (int[])[1, 2])
            fair.TakeIn(neededBy: Fairground.At(10, 30));
        fair.TakeIn(neededBy: Fairground.At(10, 40));
        fair.TakeIn(neededBy: Fairground.At(10, 40));
        var tablet = await fair.Tablet();
        Fairground.Done(_shop.Get<DeskMoveStore>().Withdraw(Who.Shop, fair.Id, 1));

        var desk = await tablet.Open(fair.Home);
        Assert.Contains("Number 3 was promised for 11:00, after its match.", desk.Main, StringComparison.Ordinal);
        await Fairground.Press(tablet, desk, "Told: promise 10:40");

        Assert.Equal(Fairground.At(10, 40), fair.Board.Of(3)!.Promised);
        Assert.DoesNotContain("after its match", (await tablet.Open(fair.Home)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_rain_all_times_move()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn(neededBy: Fairground.At(14));
        var tablet = await fair.Tablet();
        var page = await tablet.Open(fair.Home + "/shift");
        Assert.Contains("of the one waiting racket move", page.Main, StringComparison.Ordinal);

        await tablet.Send(page, ("Input.Minutes", "75"));

        Assert.Equal(Fairground.At(15, 15), fair.Board.Of(1)!.Promised);
        Fairground.Done(_shop.Get<DeskMoveStore>().Withdraw(Who.Shop, fair.Id, 1));
        Assert.Contains("nothing is waiting now", (await tablet.Open(fair.Home + "/shift")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Shift_of_more_than_three_hours_is_asked_about_before_anything_moves()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn(neededBy: Fairground.At(14));
        var tablet = await fair.Tablet();

        var asked = await tablet.Send(await tablet.Open(fair.Home + "/shift"), ("Input.Minutes", "181"));
        Assert.Equal(Fairground.At(14), fair.Board.Of(1)!.Promised);

        await tablet.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));
        Assert.Equal(Fairground.At(17, 1), fair.Board.Of(1)!.Promised);
    }

    [Fact]
    public async Task Match_that_has_begun_is_called_that()
    {
        var fair = new Fairground(_shop);
        var kind = _shop.Records.Kind();
        var tablet = await fair.Tablet();
        (string, string)[] tove = [("Input.Visitor.Name", "Tove Alling"), ("Input.MainsTension", "52"), ("Input.MainsId", $"{kind}")];

        var past = await tablet.Send(await tablet.Open(fair.Home + "/in/visitor"), [.. tove, ("Input.NeededAt", "9:30")]);
        Assert.Contains(past.Errors, error => error.StartsWith("09:30 has passed.", StringComparison.Ordinal));
        var fresh = await tablet.Send(past, ("Input.NeededAt", "14:00"), ("Input.NotBeforeAt", "15:00"));

        Assert.Contains(fresh.Errors, error => error.StartsWith("It is not to be strung before 15:00", StringComparison.Ordinal));
        Assert.Empty(fair.Board.Entries);
    }

    [Fact]
    public async Task Rackets_that_cannot_all_reach_their_matches_are_named_in_time()
    {
        var fair = new Fairground(_shop);
        for (var racket = 0; racket < 4; racket++)
            fair.TakeIn(neededBy: Fairground.At(10, 55));

        var desk = await (await fair.Tablet()).Open(fair.Home);

        Assert.Equal(2, desk.Document.QuerySelectorAll("[aria-labelledby=aside] a").Length);
    }
}
