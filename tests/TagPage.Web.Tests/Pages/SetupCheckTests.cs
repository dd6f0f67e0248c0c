using System.Globalization;
using System.Net;
using TagPage.Records.Storage;
using TagPage.Web.Setup;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class SetupCheckTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_is_told_in_plain_words_what_is_wrong_and_looking_changes_nothing()
    {
        _shop.Records.Shop();
        var owner = _shop.Owner();
        var before = _shop.Database.Dump();

        var page = await owner.Send(await owner.Open("/shop/settings/check"));

        var found = page.Document.QuerySelectorAll("dt").Zip(page.Document.QuerySelectorAll("dd"), (what, how) => what.TextContent + " " + how.TextContent.Trim()[..1]).ToList();
        Assert.Equal(["Web address ▲", "Https ✓", "Email ▲", "Records ✓", "Backups ▲", "Second folder ▲"], found[..6]);
        Assert.Contains("No mail server is set: emails become files", page.Main, StringComparison.Ordinal);
        Assert.Contains("It is 25 Nov 2026, 10:00 in Etc/UTC.", page.Main, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    /// <summary>As a disk that fails leaves it, after the look at the start and before the next one.</summary>
    [Fact]
    public async Task Damage_is_told_as_it_is_now_and_not_as_it_was_at_the_last_look()
    {
        using var shop = new TestShop { IsNew = true };
        shop.Records.Shop();
        shop.Records.Family();
        var owner = shop.Owner();
        Assert.Contains("All of them were checked just now and are undamaged.", (await owner.Send(await owner.Open("/shop/settings/check"))).Main, StringComparison.Ordinal);
        shop.Records.Change("PRAGMA ignore_check_constraints = ON; UPDATE client SET name = ''; PRAGMA ignore_check_constraints = OFF;");

        Assert.Contains("The records are damaged.", (await owner.Send(await owner.Open("/shop/settings/check"))).Main, StringComparison.Ordinal);

        Assert.Contains("The records are damaged.", (await owner.Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task File_where_backups_should_go_is_told()
    {
        using var shop = new TestShop { IsNew = true };
        shop.Records.Shop();
        var owner = shop.Owner();
        var place = shop.Get<DataFolder>().BackupsPath;
        if (Directory.Exists(place))
            Directory.Delete(place, recursive: true);
        File.WriteAllText(place, "not a folder");

        var page = await owner.Send(await owner.Open("/shop/settings/check"));

        Assert.Contains($"{place} is a file, where the folder for backups should be.", page.Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await owner.Open("/shop")).Status);
    }

    [Theory]
    [InlineData("2026-11-25 10:00", "2026-11-25 03:00", SetupState.Good)]
    [InlineData("2026-11-25 10:00", "2026-11-25 10:30", SetupState.Good)]
    [InlineData("2026-11-25 10:00", "2026-11-25 11:01", SetupState.Over)]
    [InlineData("1970-01-01 00:05", "1970-01-01 00:00", SetupState.Over)]
    public void Clock_that_went_back_is_found_by_what_is_on_file(string now, string written, SetupState state) =>
        Assert.Equal(state, SetupCheck.Clock(At(now), At(now), [At(written)], "Etc/UTC").State);

    private static DateTimeOffset At(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);
}
