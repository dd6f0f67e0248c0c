using System.Net;
using System.Text.RegularExpressions;
using TagPage.Core.Tags;

namespace TagPage.Web.Tests.Cast;

/// <summary>A house is lent again and again: nothing of one shop may reach the next.</summary>
public sealed class HouseTests
{
    private static TestShop Tenant() => new() { Settings = { ["TagPage:Address"] = "https://let-again.example" } };

    [Fact]
    public async Task Next_shop_finds_no_row_no_file_no_spent_limit_and_no_kept_page_of_the_last()
    {
        var first = Tenant();
        var (house, bare) = (first.House, Bare(first));
        var tag = await Live(first);
        first.Dispose();

        using var next = Tenant();

        Assert.Same(house, next.House);
        Assert.Equal(bare, Bare(next));
        Assert.Equal(["keys", "tagpage.db", "tagpage.lock"], Directory.EnumerateFileSystemEntries(next.Folder).Select(Path.GetFileName).Where(n => n is not ("tagpage.db-wal" or "tagpage.db-shm")).Order());
        Assert.Equal(TestShop.Today, DateOnly.FromDateTime(next.Get<TimeProvider>().GetUtcNow().DateTime));
        Assert.Empty(next.Log.All);
        Assert.Equal(HttpStatusCode.NotFound, (await next.Stranger().Get($"/t/{tag}")).StatusCode);
        Assert.DoesNotContain("Closed on Mondays", (await next.Stranger().Open("/")).Text, StringComparison.Ordinal);
        await next.OwnedByRuna();
        Assert.Equal("/shop", (await next.Stranger().SignIn()).Location);
    }

    /// <summary>Everything on file but the set-up link, which is another one at each start.</summary>
    private static string Bare(TestShop shop) => Regex.Replace(shop.Database.Dump(), "(?<=^setup_link\n)  .*\n", "", RegexOptions.Multiline);

    /// <summary>Leaves as much behind as a shop can: rows, files, pages kept in memory, tries counted there.</summary>
    private static async Task<TagCode> Live(TestShop shop)
    {
        await shop.OwnedByRuna();
        shop.Records.Shop(accent: "#336699", homeMarkdown: "Closed on Mondays");
        var tag = shop.Records.Family().Tag;
        await File.WriteAllTextAsync(Path.Combine(shop.Folder, "stray.txt"), "left behind", TestContext.Current.CancellationToken);
        Directory.CreateDirectory(Path.Combine(shop.Folder, "uploads", "stray"));
        Assert.Equal(HttpStatusCode.OK, (await shop.Stranger().Get($"/t/{tag}")).StatusCode);
        Assert.Contains("Closed on Mondays", (await shop.Stranger().Open("/")).Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.TooManyRequests, (await shop.Stranger().SignInTooOften()).Status);
        shop.Clock.Advance(TimeSpan.FromDays(3));
        return tag;
    }
}
