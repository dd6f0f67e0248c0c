using System.Text.Json;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Style;

public sealed class LicenceTests
{
    [Fact]
    public void Every_library_that_is_shipped_stands_under_Help_with_its_licence_and_none_that_is_not()
    {
        using var shipped = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "TagPage.Web.deps.json")));
        var libraries = shipped.RootElement.GetProperty("libraries").EnumerateObject()
            .Where(library => library.Value.GetProperty("type").GetString() == "package").Select(library => library.Name.Split('/')[0]);
        var rows = File.ReadAllLines(Path.Combine(Repository.Folder, "docs", "licences.md"))
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Select(line => line.Split('|', StringSplitOptions.TrimEntries)).Skip(2).ToList();

        Assert.All(rows, row => Assert.NotEqual("", row[3]));
        Assert.Equal(libraries.Order(StringComparer.OrdinalIgnoreCase), rows.Select(row => row[1]).Where(name => !name.Contains(", ", StringComparison.Ordinal)));
    }
}
