using System.Text.RegularExpressions;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Words;

/// <summary>Texts for people carry the apostrophe that print has (’), not the one of typewriters and code.</summary>
public sealed partial class ApostropheTests
{
    [GeneratedRegex(@"(?<=[A-Za-z])'(s|t|re|ve|ll|d|m)\b")]
    private static partial Regex Straight { get; }

    [GeneratedRegex("```.*?```|`[^`\n]*`", RegexOptions.Singleline)]
    private static partial Regex Code { get; }

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Literal { get; }

    [Theory]
    [InlineData("src/TagPage.Web/Pages", "*.cshtml")]
    [InlineData("src/TagPage.Web/Words", "*.json")]
    [InlineData("docs", "*.md")]
    [InlineData("seed-demo", "*.md")]
    public void Pages_phrases_the_manual_and_the_demo_have_none(string folder, string files) =>
        Assert.Empty(Lines(folder, files, text => Code.Replace(text, "")));

    [Theory]
    [InlineData("src/TagPage.Web/Pages")]
    [InlineData("src/TagPage.Web/Words")]
    [InlineData("src/TagPage.Web/Mail")]
    [InlineData("src/TagPage.Web/Http")]
    [InlineData("src/TagPage.Web/Csv")]
    [InlineData("src/TagPage.Web/Import")]
    [InlineData("src/TagPage.Web/Labels")]
    [InlineData("src/TagPage.Web/Papers")]
    [InlineData("src/TagPage.Web/Setup")]
    [InlineData("src/TagPage.Web/Start/CommandLine")]
    [InlineData("src/TagPage.Labels")]
    public void Sentences_in_the_code_have_none(string folder) =>
        Assert.Empty(Lines(folder, "*.cs", text => string.Join('\n', text.Split('\n').Where(line => !line.Contains("log.Log", StringComparison.Ordinal))
            .SelectMany(line => Literal.Matches(line).Select(m => m.Value)))));

    private static IEnumerable<string> Lines(string folder, string files, Func<string, string> textOf) =>
        from file in Directory.EnumerateFiles(Path.Combine(Repository.Folder, folder), files, SearchOption.AllDirectories)
        from line in textOf(File.ReadAllText(file)).Split('\n')
        where Straight.IsMatch(line) && !line.TrimStart().StartsWith("@*", StringComparison.Ordinal)
        select $"{Path.GetFileName(file)}: {line.Trim()}";
}
