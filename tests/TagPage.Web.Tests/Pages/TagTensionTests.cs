using System.Text.RegularExpressions;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Pages;

/// <summary>What a tag page says beside its headline: tension where it counts, and a pause. Pim plays 3 h a week; today is 25 November.</summary>
public sealed class TagTensionTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly TagCode _code;

    public TagTensionTests()
    {
        _shop.Records.Shop();
        (_, _, _, _code, _) = _shop.Records.Family();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Tension_stands_there_only_where_the_rule_lets_it_count_and_its_red_line_is_explained()
    {
        var counts = await Open();
        Assert.Single(counts.Document.QuerySelectorAll("svg.drop"));
        Assert.Contains(Languages.English.Phrases.Tag.LossLine.Replace("{limit}", "25", StringComparison.Ordinal), counts.Main, StringComparison.Ordinal);

        _shop.Records.Change("UPDATE player SET rule = 'TimesAWeek'");
        var left = await Open();
        Assert.Empty(left.Document.QuerySelectorAll("svg.drop"));
        Assert.DoesNotContain("Estimate", left.Main, StringComparison.Ordinal);
    }

    // Days and hours by hand: 116 days and 49.7 h are 48 %, 177 days and 75.9 h are 67 %.
    [Theory]
    [InlineData("2026-11-01", false, false)]
    [InlineData("2026-08-01", true, false)]
    [InlineData("2026-06-01", false, true)]
    public async Task Day_that_is_past_is_told_as_past_and_more_than_half_in_words(string strung, bool past, bool half)
    {
        _shop.Records.Change("UPDATE job SET strung_on = @strung, received_on = @strung", new { strung });
        foreach (var language in Languages.All)
        {
            var page = await _shop.Stranger().Open($"/t/{_code}?lang={language.Code}");
            Assert.Equal(past, Filled(language.Phrases.Tag.LossPast).IsMatch(page.Main));
            Assert.Equal(half, page.Main.Contains(language.Phrases.Tag.LossHalf, StringComparison.Ordinal));
        }
    }

    // The phrase with anything short in its places.
    private static Regex Filled(string phrase) => new(Regex.Replace(Regex.Escape(phrase), @"\\\{\w+}", ".{1,30}?"));

    [Fact]
    public async Task Open_pause_is_said_and_promises_no_ten_years()
    {
        Assert.DoesNotContain("is paused", (await Open()).Main, StringComparison.Ordinal);
        _shop.Records.Change("UPDATE player SET rule = 'Hours'; INSERT INTO pause (player_id, from_on) VALUES (1, '2026-11-10')");
        var page = await Open();
        Assert.Contains(Languages.English.Sentence(Languages.English.Phrases.Life.Paused), page.Main, StringComparison.Ordinal);
        Assert.Contains("2027", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("years", page.Main, StringComparison.Ordinal);
    }

    private Task<WebPage> Open() => _shop.Stranger().Open("/t/" + _code);
}
