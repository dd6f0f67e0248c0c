using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

public partial class PhraseFileTests
{
    /// <summary>Words that are spelled as in English, and patterns without any words.</summary>
    private static readonly HashSet<string> SameAsEnglish =
    [
        "de/tag/life", "de/trade/orange",
        "es/tag/life", "es/time/at", "es/trade/squash",
        "fr/tag/tension", "fr/trade/badminton", "fr/trade/multifilament", "fr/trade/orange", "fr/trade/polyester", "fr/trade/squash", "fr/trade/tennis",
        "it/tag/life", "it/trade/badminton", "it/trade/squash", "it/trade/tennis",
        "pt/tag/life", "pt/time/at", "pt/trade/badminton", "pt/trade/squash",
    ];

    public static TheoryData<string> Others => [.. Languages.All.Select(l => l.Code).Where(c => c != "en")];

    [Theory]
    [MemberData(nameof(Others))]
    public void Every_language_says_all_that_English_says(string code)
    {
        Assert.Equal(Leaves("en").Keys, Leaves(code).Keys);
        Assert.All(Leaves(code), leaf => Assert.False(string.IsNullOrWhiteSpace(leaf.Value), leaf.Key));
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void No_placeholder_is_lost_or_invented(string code)
    {
        var english = Leaves("en");
        Assert.All(Leaves(code), leaf => Assert.Equal(Placeholders(english[leaf.Key]), Placeholders(leaf.Value)));
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void Nothing_is_left_in_English(string code)
    {
        var english = Leaves("en");
        var same = Leaves(code).Where(leaf => leaf.Value == english[leaf.Key] && leaf.Key != "time/comma").Select(leaf => $"{code}/{leaf.Key}");
        Assert.Equal(SameAsEnglish.Where(s => s.StartsWith(code, StringComparison.Ordinal)).Order(), same.Order());
    }

    [Theory]
    [InlineData("ja", @"[\p{IsHiragana}\p{IsKatakana}\p{IsCJKUnifiedIdeographs}]")]
    [InlineData("zh", @"[\p{IsCJKUnifiedIdeographs}]")]
    public void Every_phrase_with_words_is_written_in_the_languages_own_script(string code, string script) =>
        Assert.All(Leaves(code).Where(leaf => WithoutPlaceholders(leaf.Value).Any(char.IsLetter)), leaf => Assert.Matches(script, leaf.Value));

    [Fact]
    public void Chinese_holds_no_Japanese_letters_and_no_traditional_forms()
    {
        // A sample of traditional characters whose simplified forms the texts use.
        const string traditional = "線換請這個網頁電話郵發說錯還";
        Assert.All(Leaves("zh"), leaf => Assert.DoesNotMatch($@"[\p{{IsHiragana}}\p{{IsKatakana}}{traditional}]", leaf.Value));
    }

    [Fact]
    public void Public_words_for_a_reason_tell_no_numbers() =>
        Assert.All(Languages.All, language => Assert.All(Enum.GetValues<Core.Forecast.LimitKind>(), kind => Assert.DoesNotContain(language.Because(kind), char.IsDigit)));

    [Theory]
    [InlineData("time", "today")]
    [InlineData("tag", "headline")]
    [InlineData("found", "intro")]
    [InlineData("reminderMail", "sms")]
    public void A_missing_or_an_empty_phrase_stops_the_program(string section, string key)
    {
        var missing = Json("es");
        missing[section]!.AsObject().Remove(key);
        Assert.Contains(key, Refused(missing), StringComparison.Ordinal);

        var empty = Json("es");
        empty[section]![key] = " ";
        Assert.Contains($"{section}/{key} is empty", Refused(empty), StringComparison.Ordinal);

        var none = Json("es");
        none[section]![key] = null;
        Assert.NotEmpty(Refused(none));
    }

    [Fact]
    public void An_unknown_phrase_stops_the_program()
    {
        var json = Json("es");
        json["tag"]!["hedline"] = "slip";
        Assert.Contains("hedline", Refused(json), StringComparison.Ordinal);
    }

    private static string Refused(JsonObject json)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(json.ToJsonString()));
        return Assert.Throws<InvalidOperationException>(() => PhraseFile.Read(stream, "es.json")).Message;
    }

    private static JsonObject Json(string code)
    {
        using var stream = typeof(PhraseFile).Assembly.GetManifestResourceStream($"TagPage.Web.Words.Languages.{code}.json")!;
        return JsonNode.Parse(stream)!.AsObject();
    }

    private static SortedDictionary<string, string> Leaves(string code)
    {
        var leaves = new SortedDictionary<string, string>(StringComparer.Ordinal);
        Collect(Json(code), "");
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

    private static string WithoutPlaceholders(string phrase) => Braces().Replace(phrase, "");

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Braces();
}
