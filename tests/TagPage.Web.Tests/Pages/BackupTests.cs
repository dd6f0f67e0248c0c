using TagPage.Records.Audit;
using TagPage.Records.Backups;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.Pages;

public sealed class BackupTests : IDisposable
{
    private readonly TestShop _shop = new() { IsNew = true, Settings = { ["TagPage:Address"] = "http://localhost:5080" } };

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
        Assert.Contains("Backups ▲ A backup failed, and there is no other.", Found(await owner.Send(await owner.Open("/shop/settings/check"))), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_of_the_setup_says_of_the_second_folder_what_the_bench_says()
    {
        _shop.Records.Shop();
        var drive = Directory.CreateTempSubdirectory("tagpage-drive-").FullName;
        Assert.IsType<Outcome.Done>(_shop.Get<BackupSettingStore>().Change(Who.Shop, new BackupSetting { Folder = drive }));
        await File.WriteAllTextAsync(Path.Combine(_shop.Get<DataFolder>().Keys, "backups.seal"), "half a seal", TestContext.Current.CancellationToken);
        Assert.Null(_shop.Get<BackupStore>().Make(BackupFile.ByHand));
        var owner = _shop.Owner();

        var (bench, check) = (await owner.Open("/shop"), await owner.Send(await owner.Open("/shop/settings/check")));

        Assert.Contains($"Backups do not reach the second folder, {drive}.", bench.Main, StringComparison.Ordinal);
        Assert.Contains($"Second folder ▲ Backups do not reach the second folder, {drive}.", Found(check), StringComparison.Ordinal);
        Assert.Contains("Backups ✓", Found(check), StringComparison.Ordinal);
        Directory.Delete(drive);
    }

    private static string Found(WebPage check) => string.Join('\n', check.Document.QuerySelectorAll("dt").Select(what => $"{what.TextContent} {what.NextElementSibling!.TextContent.Trim()}"));

    [Fact]
    public async Task Owner_names_a_second_folder_and_reads_why_one_is_refused()
    {
        _shop.Records.Shop();
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/backups/settings");

        var refused = await owner.Send(form, ("Input.Folder", _shop.Folder));
        Assert.StartsWith("This folder is inside the data folder", Assert.Single(refused.Errors), StringComparison.Ordinal);

        var drive = Directory.CreateTempSubdirectory("tagpage-drive-").FullName;
        await owner.Send(form, ("Input.Folder", drive), ("Input.Days", "3"));
        Assert.Equal(new BackupSetting { Folder = drive, Days = 3 }, _shop.Get<BackupSettingStore>().Get());
        Directory.Delete(drive);
    }

    [Fact]
    public async Task Owner_goes_back_to_a_backup_with_the_password_and_stays_signed_in()
    {
        var runa = await SignedIn();
        Assert.Null(_shop.Get<BackupStore>().Make(BackupFile.ByHand));
        _shop.Records.Client("Ilse Marrow");
        var page = await runa.Open("/shop/backups/one/20261125-100000-by-hand.db");
        Assert.Contains("Clients01", string.Concat(page.Document.QuerySelector("tbody tr")!.Children.Select(c => c.TextContent)), StringComparison.Ordinal);

        var wrong = await runa.Send(page, ("Input.Password", "four blue herons walking"));
        Assert.Equal("This is not the password you sign in with.", Assert.Single(wrong.Errors));
        Assert.Equal(1, _shop.Records.Count("client"));

        var done = await runa.Send(page, ("Input.Password", Runa.Password));
        Assert.Equal("/shop/backups", done.Location);
        Assert.Equal(0, _shop.Records.Count("client"));
        Assert.Contains("made before going back to a backup", (await runa.Open("/shop/backups")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Backup_is_downloaded_with_the_password_alone_and_is_sealed_once_there_is_a_passphrase()
    {
        var runa = await SignedIn();
        Assert.Null(_shop.Get<BackupStore>().Make(BackupFile.ByHand));
        var page = await runa.Open("/shop/backups/one/20261125-100000-by-hand.db");
        var form = (AngleSharp.Html.Dom.IHtmlFormElement)page.Form()!;
        form.SetAttribute("action", page.Path + "?handler=download");
        Assert.Equal("Enter your password.", Assert.Single((await runa.Send(page, form)).Errors));

        var plain = await runa.Send(page, form, ("Input.Password", Runa.Password));
        Assert.StartsWith("SQLite format 3", plain.Text, StringComparison.Ordinal);

        var passphrase = await runa.Open("/shop/backups/passphrase");
        await runa.Send(passphrase, ("Input.Passphrase", "otters under bridges"), ("Input.Password", Runa.Password));
        var closed = await runa.Send(page, form, ("Input.Password", Runa.Password));
        Assert.StartsWith("TagPage sealed 1", closed.Text, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_shop.Get<DataFolder>().Uploads));
    }

    [Fact]
    public async Task Damaged_passphrase_is_said_on_the_page_and_nothing_leaves_unsealed()
    {
        var runa = await SignedIn();
        Assert.Null(_shop.Get<BackupStore>().Make(BackupFile.ByHand));
        await File.WriteAllTextAsync(Path.Combine(_shop.Get<DataFolder>().Keys, "backups.seal"), "half a seal", TestContext.Current.CancellationToken);
        var page = await runa.Open("/shop/backups/one/20261125-100000-by-hand.db");
        var form = (AngleSharp.Html.Dom.IHtmlFormElement)page.Form()!;
        form.SetAttribute("action", page.Path + "?handler=download");

        var answer = await runa.Send(page, form, ("Input.Password", Runa.Password));

        Assert.Contains("The passphrase for backups is damaged", answer.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("SQLite format 3", answer.Text, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("audit", $"event = {(int)AuditEvent.BackupDownloaded}"));
    }

    [Fact]
    public async Task File_that_is_sent_is_looked_at_before_anything_is_changed()
    {
        var runa = await SignedIn();
        var page = await runa.Open("/shop/backups");
        using var content = new MultipartFormDataContent();
        foreach (var (name, value) in FormValues.Of((AngleSharp.Html.Dom.IHtmlFormElement)page.Document.QuerySelector("form[enctype]")!).Pairs.Where(p => p.Key != "Sent"))
            content.Add(new StringContent(value), name);
        content.Add(new ByteArrayContent("Dear diary"u8.ToArray()), "Sent", "diary.db");
        var sent = await runa.Client.PostAsync(new Uri("/shop/backups?handler=send", UriKind.Relative), content, TestContext.Current.CancellationToken);

        var answer = await runa.Open(sent.Headers.Location!.ToString());

        Assert.Contains("This is not a backup of this program, or its beginning is damaged. Use another file. Nothing was changed.", answer.Main, StringComparison.Ordinal);
        Assert.Null(answer.Form());
    }

    [Theory]
    [InlineData("../tagpage.db")]
    [InlineData("..%2Ftagpage.db")]
    [InlineData("20261125-100000-nightly.db")]
    [InlineData("0123456789abcdef0123456789abcdef")]
    public async Task What_is_no_backup_is_not_there(string name) =>
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await _shop.Owner().Get("/shop/backups/one/" + name)).StatusCode);

    private async Task<Visitor> SignedIn()
    {
        await _shop.OwnedByRuna();
        _shop.Records.Shop();
        var runa = _shop.Stranger();
        await runa.SignIn();
        return runa;
    }
}
