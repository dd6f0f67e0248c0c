using System.Text.RegularExpressions;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Architecture;

public sealed class MapTests
{
    private static readonly string Map = Regex.Match(File.ReadAllText(Path.Combine(Repository.Folder, "DEVELOPERS.md")), "## Map(.*?)## How", RegexOptions.Singleline).Groups[1].Value;

    private static readonly HashSet<string> Parts = [.. new[] { "src", "tests", "wwwroot", "docs", "seed-demo", "deploy", "licences" }
        .SelectMany(f => Repository.Files(f, "*").Prepend(f))
        .SelectMany(f => f.Split('/', '\\'))
        .SelectMany(n => n.Split('.').Append(n))];

    [Fact]
    public void Every_name_on_the_newcomers_map_is_a_file_or_a_folder() => Assert.Equal("", string.Join(", ",
        from quoted in Regex.Matches(Map, "`([^`]+)`").Select(m => m.Groups[1].Value)
        where !quoted.Contains('<', StringComparison.Ordinal) && !quoted.Contains('{', StringComparison.Ordinal)
        from part in quoted.TrimStart('…').Split('/', StringSplitOptions.RemoveEmptyEntries)
        where !Parts.Contains(part)
        select quoted));
}
