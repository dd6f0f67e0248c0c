using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Tests.Words;

public partial class OwnPageWordsTests
{
    /// <summary>The symbol of the hour (SI brochure, table 8) is the same in every language.</summary>
    private const string HourSymbol = "{n} h";

    public static TheoryData<string> Others => [.. OwnPageWords.Spoken.Select(l => l.Code).Where(c => c != "en")];

    [Fact]
    public void Own_page_speaks_every_language_that_the_public_pages_speak() =>
        Assert.Equal(Languages.All.Select(l => l.Code), OwnPageWords.Spoken.Select(l => l.Code));

    [Theory]
    [MemberData(nameof(Others))]
    public void Every_language_says_all_that_English_says_with_the_same_placeholders(string code)
    {
        var (english, other) = (Leaves("en"), Leaves(code));
        Assert.Equal(english.Keys, other.Keys);
        Assert.All(other, leaf => Assert.Equal(Placeholders(english[leaf.Key]), Placeholders(leaf.Value)));
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void Nothing_is_left_in_English(string code)
    {
        var english = Leaves("en");
        Assert.All(Leaves(code).Where(l => Braces().Replace(l.Value, "").Any(char.IsLetter) && l.Value != HourSymbol), leaf => Assert.NotEqual(english[leaf.Key], leaf.Value));
    }

    private static SortedDictionary<string, string> Leaves(string code)
    {
        using var stream = typeof(PhraseFile).Assembly.GetManifestResourceStream($"TagPage.Web.Words.OwnPage.{code}.json")!;
        var leaves = new SortedDictionary<string, string>(StringComparer.Ordinal);
        Collect(JsonNode.Parse(stream)!, "");
        return leaves;

        void Collect(JsonNode node, string path)
        {
            if (node is JsonObject branch)
                foreach (var (key, child) in branch)
                    Collect(child!, path.Length == 0 ? key : $"{path}/{key}");
            else
                leaves[path] = node.GetValue<string>();
        }
    }

    private static IEnumerable<string> Placeholders(string phrase) => Braces().Matches(phrase).Select(m => m.Value).Distinct().Order();

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Braces();
}
