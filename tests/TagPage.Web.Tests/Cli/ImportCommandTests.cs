using System.Text;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.Cli;

/// <summary>Records brought in from the command line, where nobody can be asked. The clock is this machine's, so the files are of 2020.</summary>
public sealed class ImportCommandTests : IDisposable
{
    private readonly OwnersDesk _desk = new();

    public void Dispose() => _desk.Dispose();

    [Fact]
    public async Task Clients_who_may_be_on_file_are_listed_and_nothing_is_saved()
    {
        SetUp(shop => shop.Records.Client("Odalys Ferran", "+442079460958"));

        var (code, output, errors) = await Import();

        Assert.Equal((1, "Nothing was saved.\n"), (code, output.ReplaceLineEndings("\n")));
        Assert.Contains("clients.csv:2: ", errors, StringComparison.Ordinal);
        Assert.Contains("--matches", errors, StringComparison.Ordinal);
        Assert.Equal(1, _desk.Start().Records.Count("client"));
    }

    [Theory]
    [InlineData("merge", 2, "Already there: 1 client.\nAdded 1 client, 2 players, ")]
    [InlineData("apart", 3, "Added 2 clients, 2 players, ")]
    public async Task Option_decides_for_all(string matches, int clients, string told)
    {
        SetUp(shop => shop.Records.Client("Odalys Ferran", "+442079460958"));

        var (code, output, errors) = await Import("--matches", matches);

        Assert.Equal((0, ""), (code, errors));
        Assert.Contains(told, output.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Equal(clients, _desk.Start().Records.Count("client"));
    }

    [Fact]
    public async Task Client_who_may_be_two_on_file_stays_undecided_also_with_merge()
    {
        SetUp(shop =>
        {
            shop.Records.Client("Odalys Ferran");
            shop.Records.Client("Ewan Lockyer", "+442079460958");
        });

        var (code, _, errors) = await Import("--matches=merge");

        Assert.Equal(1, code);
        Assert.Contains("Odalys Ferran may be Odalys Ferran (on file, the same name); or Ewan Lockyer, +44 20 7946 0958 (on file, the same phone number).", errors, StringComparison.Ordinal);
        Assert.Equal(2, _desk.Start().Records.Count("client"));
    }

    [Fact]
    public async Task Old_jobs_are_settled_by_an_option()
    {
        SetUp(_ => { });

        var (code, output, _) = await Import("--settled-before", "2020-10-01");

        Assert.Equal(0, code);
        Assert.Contains("Counted 0 jobs as collected and 1 job as paid that the files leave open.", output, StringComparison.Ordinal);
        Assert.Equal("2020-09-03", _desk.Start().Records.Text("SELECT paid_on FROM job WHERE ticket = 901"));
    }

    [Fact]
    public async Task Old_jobs_that_nobody_settled_are_pointed_out()
    {
        SetUp(_ => { });

        var (_, told, _) = await Import("--check");
        var (_, settled, _) = await Import("--check", "--settled-before", "2020-10-01");

        Assert.Contains("1 job strung more than 30 days ago is not collected or not paid. --settled-before DAY counts such jobs as both.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("--settled-before", settled, StringComparison.Ordinal);
    }

    private void SetUp(Action<TestShop> also)
    {
        var shop = _desk.Start();
        ImportedShop.SetUp(shop);
        also(shop);
        _desk.Stop();
        var folder = Directory.CreateDirectory(Folder).FullName;
        var sheet = new Spreadsheet();
        foreach (var name in Spreadsheet.Names)
            File.WriteAllText(Path.Combine(folder, name), sheet[name].Replace("2026-", "2020-", StringComparison.Ordinal), Encoding.UTF8);
    }

    private string Folder => Path.Combine(_desk.Place, "files");

    private Task<(int Code, string Output, string Errors)> Import(params string[] options) => _desk.Ask(["import", Folder, .. options]);
}
