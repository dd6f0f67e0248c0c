using TagPage.Web.Pages.Desk;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>Which names the desk shows to whom.</summary>
public sealed class DeskNamesTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Board_shows_numbers_and_no_names()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn("Pim Ferran", junior: true, Fairground.At(10, 20));
        fair.TakeIn("Tove Alling");
        for (var more = 0; more < BoardModel.Most; more++)
            fair.TakeIn("Tove Alling", neededBy: Fairground.At(10, 20));

        var board = await (await fair.Tablet()).Open(fair.Home + "/board");

        Assert.Contains("1", board.Document.QuerySelector("[aria-labelledby=risk]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("late", board.Document.QuerySelector("[aria-labelledby=risk]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("and 1 more", board.Document.QuerySelector("[aria-labelledby=risk]")!.TextContent, StringComparison.Ordinal);
        foreach (var name in (string[])["Pim", "Ferran", "Tove", "Norden"])
            Assert.DoesNotContain(name, Written(board), StringComparison.Ordinal);
        Assert.NotNull(board.Document.QuerySelector("noscript"));
        Assert.Contains("http-equiv=\"refresh\"", board.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Juniors_name_stands_on_no_page_of_the_desk()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn("Pim Ferran", junior: true);
        var tablet = await fair.Tablet();

        foreach (var path in new[] { "", "/board", "/entry/1", "/out", "/sheet", $"/technician/{fair.Runa}" })
            Assert.DoesNotContain("Pim", Written(await tablet.Open(fair.Home + path)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Juniors_name_stands_on_no_page_where_a_helper_takes_in_and_the_owner_reads_it()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn("Pim Ferran", junior: true);
        var (tablet, runa) = (await fair.Tablet(), _shop.Owner());
        var (player, racket) = (fair.Board.Of(1)!.PlayerId, fair.Board.Of(1)!.RacketId);

        var found = Found(await tablet.Open(fair.Home + "/in?q=Pim"));
        Assert.Contains("Player of number 1, racket 1: at the desk already, number 1", found, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", found, StringComparison.Ordinal);
        Assert.Contains("Pim Ferran, racket 1", Found(await runa.Open(fair.Home + "/in?q=Pim")), StringComparison.Ordinal);
        foreach (var path in new[] { $"/in/player/{player}", $"/in/racket/{racket}" })
        {
            Assert.DoesNotContain("Pim", Written(await tablet.Open(fair.Home + path)), StringComparison.Ordinal);
            Assert.Contains("Pim Ferran", (await runa.Open(fair.Home + path)).Main, StringComparison.Ordinal);
        }
        _shop.Records.Change("UPDATE player SET label_name = 'Pimmy' WHERE name = 'Pim Ferran'");
        Assert.Contains("Pimmy, racket 2", (await tablet.Open($"{fair.Home}/in/player/{player}")).Main, StringComparison.Ordinal);
    }

    /// <summary>The whole page but for the random letters of its forms, among which any name of three may stand.</summary>
    private static string Written(WebPage page) => page.Document.QuerySelectorAll("input[name=__RequestVerificationToken], input[name$=FormKey]")
        .Select(token => token.GetAttribute("value")!).Where(token => token.Length > 0).Aggregate(page.Text, (text, token) => text.Replace(token, "", StringComparison.Ordinal));

    private static string Found(WebPage page) => page.Document.QuerySelector("[aria-labelledby=found]")!.TextContent;
}
