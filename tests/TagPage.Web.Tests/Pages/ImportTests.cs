using System.Net;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.Pages;

public sealed class ImportTests : IDisposable
{
    private readonly TestShop _shop = new();

    public ImportTests() => ImportedShop.SetUp(_shop);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_checks_files_sees_what_would_be_added_and_brings_them_in_once()
    {
        var owner = _shop.Owner();
        var sent = await SentFiles.Send(owner, new Spreadsheet());
        var check = await owner.Open(sent.Location!);
        Assert.Contains("This would add 2 clients, 2 players, 2 strings, 2 rackets, 1 live tag, 2 retired tags, 1 spec and 2 jobs. Nothing is saved yet.", check.Main, StringComparison.Ordinal);
        Assert.Equal(0, ImportedRows.Count(_shop.Database, "client"));

        var done = await owner.Send(check);
        var again = await owner.Send(check);

        Assert.Equal(("/shop", "/shop"), (done.Location, again.Location));
        Assert.Equal(2, ImportedRows.Count(_shop.Database, "job"));
        Assert.Empty(Directory.GetDirectories(Path.Combine(_shop.Folder, "uploads")));
    }

    [Fact]
    public async Task Owner_reads_file_line_and_column_of_what_is_wrong_and_cannot_bring_it_in()
    {
        var owner = _shop.Owner();
        var sent = await SentFiles.Send(owner, new Spreadsheet().Cell("jobs.csv", 2, "strung_on", "soon"));

        var check = await owner.Open(sent.Location!);

        var row = Assert.Single(check.Document.QuerySelectorAll("tbody tr"));
        Assert.Equal(["jobs.csv", "2", "strung_on", "Enter a date as 2027-03-14 (year-month-day), not “soon”."], row.Children.Select(c => c.TextContent.Trim()));
        Assert.Null(check.Document.QuerySelector("main form"));
        Assert.Equal(0, ImportedRows.Count(_shop.Database, "client"));
    }

    [Fact]
    public async Task Files_are_forgotten_after_an_hour()
    {
        var owner = _shop.Owner();
        var sent = await SentFiles.Send(owner, new Spreadsheet());
        var check = await owner.Open(sent.Location!);

        _shop.Clock.Advance(TimeSpan.FromMinutes(61));

        Assert.Equal(HttpStatusCode.NotFound, (await owner.Send(check)).Status);
        Assert.Empty(Directory.GetDirectories(Path.Combine(_shop.Folder, "uploads")));
        Assert.Equal(0, ImportedRows.Count(_shop.Database, "client"));
    }

    [Theory]
    [InlineData("/shop/import/check/0123456789abcdef0123456789abcdef")]
    [InlineData("/shop/import/check/..%2Fkeys")]
    [InlineData("/shop/import/check/keys")]
    [InlineData("/shop/import/template/shop.csv")]
    public async Task Keys_and_names_that_nobody_gave_out_are_not_found(string path) =>
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get(path)).StatusCode);

    [Fact]
    public async Task Unknown_name_is_refused_beside_the_field_and_nothing_is_kept()
    {
        var answer = await SentFiles.Upload(_shop.Owner(), [("people.csv", "client,name\n"u8.ToArray())]);

        Assert.Equal("“people.csv” is not a known file name. Known names are clients.csv, players.csv, strings.csv, frames.csv, rackets.csv, specs.csv, places.csv, pieces.csv, jobs.csv.", Assert.Single(answer.Errors));
        Assert.False(Directory.Exists(Path.Combine(_shop.Folder, "uploads")) && Directory.EnumerateDirectories(Path.Combine(_shop.Folder, "uploads")).Any());
    }

    [Fact]
    public async Task Nothing_chosen_is_told() =>
        Assert.Equal("Choose the files to bring in.", Assert.Single((await SentFiles.Upload(_shop.Owner(), [])).Errors));

    [Fact]
    public async Task More_than_a_set_of_files_can_hold_is_refused_unread()
    {
        var answer = await SentFiles.Upload(_shop.Owner(), [("clients.csv", new byte[122_000_000])]);

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.Status);
        Assert.Contains("That is too much at once", answer.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Template_of_each_file_is_read_back_without_a_problem()
    {
        var owner = _shop.Owner();
        var page = await owner.Open("/shop/import");
        var links = page.Document.QuerySelectorAll("a[download]").Select(a => a.GetAttribute("href")!).ToList();
        Assert.Equal(9, links.Count);
        var files = new List<(string, byte[])>();
        foreach (var link in links)
            files.Add((Path.GetFileName(link), await (await owner.Get(link)).Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)));

        var check = await owner.Open((await SentFiles.Upload(owner, files)).Location!);

        Assert.Contains("This would add nothing, because the files hold no records.", check.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stranger_cannot_send_files()
    {
        Assert.NotEqual(HttpStatusCode.OK, (await _shop.Stranger().Get("/shop/import")).StatusCode);
    }
}
