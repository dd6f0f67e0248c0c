using System.IO.Compression;
using System.Net;
using System.Text.Json;
using Dapper;
using TagPage.Records.Privacy;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Odalys downloads everything that the shop keeps about her household, and nothing about anybody else.</summary>
public sealed class ExportTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        var teo = _shop.Records.Client("Teo Brandt", "+442079460111", "teo@brandt.example");
        _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(teo, "Lena Brandt"), frame: "Corvid 100"), new(2026, 10, 1));
        var family = _shop.Records.Family();
        _shop.Records.Reading(family.Job, 62.5m);
        _shop.Records.Change("UPDATE racket SET frame = '=HYPERLINK(\"x\")', note = 'two, \"three\"' WHERE id = @Racket", new { family.Racket });
        _phone = await _shop.OnOwnPage(family.Client);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    /// <summary>Whoever adds a column decides here whether clients can download it.</summary>
    [Fact]
    public void Every_column_of_every_table_has_a_decision_and_every_decision_a_column()
    {
        var tables = _shop.Database.Read(c => c.Query<string>("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'search_%'").ToList());
        var undecided = tables.Where(t => !ExportPlan.NotGiven.ContainsKey(t) && ExportPlan.Given.All(g => g.Name != t));
        Assert.Empty(undecided);
        foreach (var table in ExportPlan.Given)
        {
            var columns = _shop.Database.Read(c => c.Query<string>($"SELECT name FROM pragma_table_info('{table.Name}')").ToList());
            Assert.Equal(columns.Order(), table.Decided.Order());
        }
    }

    [Fact]
    public async Task Zip_holds_every_table_as_csv_and_all_of_it_once_more_as_json()
    {
        var files = await Export();

        Assert.Equal(ExportPlan.Given.Select(t => t.Name + ".csv").Append("everything.json").Order(), files.Keys.Order());
        using var json = JsonDocument.Parse(files["everything.json"]);
        Assert.Equal("Odalys Ferran", json.RootElement.GetProperty("client")[0].GetProperty("name").GetString());
        Assert.Equal(62.5, json.RootElement.GetProperty("reading")[0].GetProperty("value").GetDouble());
        Assert.Equal(1, json.RootElement.GetProperty("job").GetArrayLength());
        Assert.Contains("canary: ring the side door", files["client.csv"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Photos_are_files_of_the_zip_and_another_households_are_not()
    {
        _shop.Records.Change("""
            INSERT INTO photo (job_id, made_at, width, height, small, picture)
            SELECT j.id, '2026-11-20T10:00:00.000Z', 4, 3, x'FFD8FF', CAST(x'FFD8FF' || CAST(c.name AS BLOB) AS BLOB)
            FROM job j JOIN racket r ON r.id = j.racket_id JOIN player p ON p.id = r.player_id JOIN client c ON c.id = p.client_id ORDER BY c.name
            """);

        var files = await Export();

        Assert.EndsWith("Odalys Ferran", files["1.jpg"], StringComparison.Ordinal);
        Assert.Contains("photo/1.jpg", files["photo.csv"], StringComparison.Ordinal);
        Assert.Single(files.Keys, name => name.EndsWith(".jpg", StringComparison.Ordinal));
        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(_shop.Folder, "uploads")));
    }

    [Fact]
    public async Task Mails_are_given_as_their_words_with_a_gap_where_the_link_was()
    {
        var client = _shop.Records.Text("SELECT CAST(id AS TEXT) FROM client WHERE name = 'Odalys Ferran'");
        var links = _shop.Get<TagPage.Records.OwnPages.OwnPageLinkStore>();
        links.Mail(TagPage.Records.Storage.Who.Shop, _shop.MakesOwnPageLink(long.Parse(client, System.Globalization.CultureInfo.InvariantCulture)));

        Assert.Contains("if one goes missing.\n\n…\n\nIt works until", (await Export())["outbox.csv"].ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_of_another_household_and_no_secret_is_in_it()
    {
        var all = string.Concat((await Export()).Values);

        foreach (var foreign in new[] { "Teo", "Lena", "brandt.example", "Corvid", _shop.Records.Text("SELECT id_hash FROM own_page_session"), _shop.Records.Text("SELECT secret FROM own_page_code") })
            Assert.DoesNotContain(foreign, all, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cell_that_a_spreadsheet_would_run_is_disarmed_and_quotes_are_doubled()
    {
        var rackets = (await Export())["racket.csv"];

        Assert.StartsWith("\uFEFFid,player_id", rackets, StringComparison.Ordinal);
        Assert.Contains("\"'=HYPERLINK(\"\"x\"\")\"", rackets, StringComparison.Ordinal);
        Assert.Contains("\"two, \"\"three\"\"\"", rackets, StringComparison.Ordinal);
        Assert.EndsWith("\r\n", rackets, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Telephone_number_is_left_as_it_is() =>
        Assert.Contains($",{OnFile.CanaryPhone},", (await Export())["client.csv"], StringComparison.Ordinal);

    [Fact]
    public async Task Without_a_code_there_is_no_file()
    {
        await _phone.ProvesToBe(_shop);
        var page = await _phone.Open("/my/export");
        _shop.Clock.Advance(TimeSpan.FromMinutes(10));

        var answer = await _phone.Send(page);

        Assert.Equal("text/html", answer.Response.Content.Headers.ContentType?.MediaType);
        Assert.DoesNotContain("canary: ring", answer.Text, StringComparison.Ordinal);
    }

    private async Task<Dictionary<string, string>> Export()
    {
        await _phone.ProvesToBe(_shop);
        var page = await _phone.Open("/my/export");
        var token = page.Document.QuerySelector("[name=__RequestVerificationToken]")!.GetAttribute("value")!;
        using var form = new FormUrlEncodedContent([new("__RequestVerificationToken", token)]);
        var answer = await _phone.Client.PostAsync(new Uri("/my/export", UriKind.Relative), form, TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode == HttpStatusCode.OK, string.Join('\n', _shop.Log.All.Where(l => l.StartsWith("Error", StringComparison.Ordinal))));
        Assert.Equal("application/zip", answer.Content.Headers.ContentType?.MediaType);
        Assert.True(answer.Headers.CacheControl?.NoStore);
        using var zip = new ZipArchive(await answer.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken));
        var files = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in zip.Entries)
        {
            using var bytes = new MemoryStream();
            using (var content = entry.Open())
                await content.CopyToAsync(bytes, TestContext.Current.CancellationToken);
            files[entry.Name] = System.Text.Encoding.UTF8.GetString(bytes.ToArray());
        }
        return files;
    }
}
