using System.Text;
using System.Text.RegularExpressions;
using Dapper;
using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Stores;

/// <summary>A record's number is given once: what outlives a record leads to no other.</summary>
public sealed partial class NumbersTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Every_number_of_a_record_is_given_once()
    {
        var tables = _shop.Database.Read(c => c.Query<string>("SELECT sql FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'search_%'").ToList());

        var numbered = tables.Where(sql => Numbered().IsMatch(sql)).ToList();

        Assert.True(numbered.Count > 15);
        Assert.All(numbered, sql => Assert.Contains("INTEGER PRIMARY KEY AUTOINCREMENT", sql, StringComparison.Ordinal));
    }

    [Fact]
    public void Import_gives_no_number_of_a_client_that_is_gone()
    {
        _shop.Records.Shop();
        var gone = _shop.Records.Client("Odalys Ferran");
        _shop.Records.Change("DELETE FROM client");
        var files = new ImportFiles();
        files.TryAdd("clients.csv", Encoding.UTF8.GetBytes("client,name\nC1,Bram Tolle\n"));

        Assert.Empty(_shop.Get<Importer>().Import(files, new ImportChoices(), FormKey.New()).Problems);

        Assert.Equal($"{gone + 1}", _shop.Records.Text("SELECT id FROM client"));
    }

    [GeneratedRegex(@"\bid +INTEGER PRIMARY KEY(?! CHECK \(id = 1\))")]
    private static partial Regex Numbered();
}
