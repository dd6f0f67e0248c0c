using TagPage.Records.Backups;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.Pages;

public sealed class BackupTests : IDisposable
{
    private readonly TestShop _shop = new() { IsNew = true };

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_makes_a_backup_and_reads_on_the_bench_when_the_last_one_was_made()
    {
        _shop.Records.Shop();
        var owner = _shop.Owner();
        Assert.Contains("No backup yet.", (await owner.Open("/shop")).Main, StringComparison.Ordinal);

        var page = await owner.Send(await owner.Open("/shop/backups"));

        Assert.Equal("/shop/backups", page.Location);
        Assert.Contains("25 Nov 2026, 10:00 made by you", (await owner.Open("/shop/backups")).Main, StringComparison.Ordinal);
        Assert.Contains("Last backup: 25 Nov 2026, 10:00.", (await owner.Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Failed_backup_stands_on_the_bench_with_what_to_do_and_stops_an_import_before_it_begins()
    {
        ImportedShop.SetUp(_shop);
        var owner = _shop.Owner();
        var sent = await SentFiles.Send(owner, new Spreadsheet());
        if (Directory.Exists(_shop.Get<DataFolder>().BackupsPath))
            Directory.Delete(_shop.Get<DataFolder>().BackupsPath, recursive: true);
        await File.WriteAllTextAsync(Path.Combine(_shop.Folder, "backups"), "in the way", TestContext.Current.CancellationToken);

        var answer = await owner.Send(await owner.Open(sent.Location!));

        Assert.Contains("No backup could be made first, so nothing was changed.", answer.Main, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("client"));
        Assert.Contains("A backup failed, and there is no other.", (await owner.Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Owner_names_a_second_folder_and_reads_why_one_is_refused()
    {
        _shop.Records.Shop();
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/backups/settings");

        var refused = await owner.Send(form, ("Input.Folder", _shop.Folder));
        Assert.StartsWith("This folder lies within the data folder", Assert.Single(refused.Errors), StringComparison.Ordinal);

        var drive = Directory.CreateTempSubdirectory("tagpage-drive-").FullName;
        await owner.Send(form, ("Input.Folder", drive), ("Input.Days", "3"));
        Assert.Equal(new BackupSetting { Folder = drive, Days = 3 }, _shop.Get<BackupSettingStore>().Get());
        Directory.Delete(drive);
    }
}
