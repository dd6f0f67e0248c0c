using System.Text.RegularExpressions;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Architecture;

/// <summary>The one thing of the code's form that neither the compiler's analyzers nor the formatter of white space look at.</summary>
public sealed partial class UsingTests
{
    private static readonly string[] Folders = ["src", "tests"];

    [Fact]
    public void Imports_stand_in_order_with_those_of_the_framework_first() => Assert.Equal("", string.Join('\n',
        from path in Folders.SelectMany(folder => Repository.Files(folder, "*.cs"))
        where !IsInOrder(File.ReadLines(Path.Combine(Repository.Folder, path)))
        select path));

    [Theory]
    [InlineData("using System;\nusing Dapper;\nusing static A.B;\nusing C = A.B;", true)]
    [InlineData("using Dapper;\nusing System;", false)]
    [InlineData("using TagPage.Web;\nusing TagPage.Core;", false)]
    [InlineData("using System.Text.Json;\nusing System.Text;", false)]
    [InlineData("using C = A.B;\nusing static A.B;", false)]
    [InlineData("using Systems;\nusing System;", false)]
    [InlineData("using D = System.Text;\nusing C = A.B;", false)]
    public void Order_is_told_from_disorder(string imports, bool inOrder) => Assert.Equal(inOrder, IsInOrder($"{imports}\n\nnamespace N;".Split('\n')));

    private static bool IsInOrder(IEnumerable<string> lines)
    {
        var imports = lines.TakeWhile(l => !l.StartsWith("namespace ", StringComparison.Ordinal)).Select(l => Import().Match(l)).Where(m => m.Success).ToList();
        return imports.SequenceEqual(imports
            .OrderBy(m => m.Groups["alias"].Success).ThenBy(m => m.Groups["static"].Success)
            .ThenBy(m => m.Groups["alias"].Success || !OfTheFramework().IsMatch(m.Groups["name"].Value))
            .ThenBy(m => (m.Groups["alias"].Success ? m.Groups["alias"] : m.Groups["name"]).Value, StringComparer.OrdinalIgnoreCase));
    }

    [GeneratedRegex(@"^using (?<static>static )?((?<alias>\w+) = )?(?<name>[\w.]+);$")]
    private static partial Regex Import();

    [GeneratedRegex(@"^System(\.|$)")]
    private static partial Regex OfTheFramework();
}
