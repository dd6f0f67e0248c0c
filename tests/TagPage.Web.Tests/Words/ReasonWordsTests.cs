using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

public class ReasonWordsTests
{
    private static readonly DateOnly Strung = new(2026, 3, 2);

    private static readonly BedString Polyester = new(Material.Polyester, 1.30m);

    [Theory]
    [InlineData(0, "played 0 times a week, at least 2 restrings a year: 182 days")]
    [InlineData(1, "played 1 time a week, at least 2 restrings a year: 182 days")]
    [InlineData(2, "played 2 times a week, at least 2 restrings a year: 182 days")]
    [InlineData(2.5, "as many restrings a year as times played a week (2.5): 146 days")]
    [InlineData(21, "as many restrings a year as times played a week (21): 17 days")]
    public void Times_a_week(double times, string why) => Assert.Equal(why, Why<TimesAWeekLimit>("en", Racket(times)));

    [Theory]
    [InlineData("en", "18 h of play at 4.5 h a week: 28 days")]
    [InlineData("de", "18 Spielstunden bei 4,5 Stunden in der Woche: 28 Tage")]
    [InlineData("zh", "可打18小时，每周4.5小时：28天")]
    public void Hours(string code, string why) => Assert.Equal(why, Why<HoursLimit>(code, Racket(3)));

    [Fact]
    public void Hours_of_a_hybrid_and_hours_without_play_or_strings()
    {
        var hybrid = Racket(3) with { Bed = new Bed(Polyester with { GaugeMm = 1.25m }, new BedString(Material.NaturalGut, 1.30m)) };
        Assert.Equal("16.64 h of play (the shorter-lived of two strings) at 4.5 h a week: 25 days", Why<HoursLimit>("en", hybrid));
        Assert.Equal("no hours of play are noted", Why<HoursLimit>("en", Racket(0)));
        Assert.Equal("the strings are not known, so their hours are not either", Why<HoursLimit>("en", Racket(3) with { Bed = null }));
    }

    [Theory]
    [InlineData("en", 1, "agreed: every week, which is 7 days")]
    [InlineData("en", 6, "agreed: every 6 weeks, which is 42 days")]
    [InlineData("de", 1, "vereinbart: jede Woche, das sind 7 Tage")]
    [InlineData("es", 6, "lo acordado: cada 6 semanas, es decir, 42 días")]
    public void Weeks(string code, int weeks, string why) => Assert.Equal(why, Why<EveryWeeksLimit>(code, Racket(3) with { EveryWeeks = weeks }));

    [Fact]
    public void The_shops_own_date()
    {
        Assert.Equal("the shop chose this date", Why<OwnersDateLimit>("en", Racket(3) with { OwnersDate = Strung }));
        Assert.Equal("the date the shop chose is from before these strings", Why<OwnersDateLimit>("en", Racket(3) with { OwnersDate = Strung.AddDays(-1) }));
    }

    [Fact]
    public void Every_limit_has_its_words_in_every_language() => Assert.All(Languages.All, language =>
    {
        var limits = Worked(Racket(3) with { EveryWeeks = 6, OwnersDate = Strung }).Limits;
        Assert.Equal(Enum.GetValues<LimitKind>().Order(), limits.Select(l => l.Kind).Order());
        Assert.All(limits, limit => Assert.DoesNotContain('{', language.Why(limit)));
    });

    private static string Why<T>(string code, ForecastInput racket) where T : LimitDay =>
        Languages.Of(code)!.Why(Worked(racket).Limits.OfType<T>().Single());

    private static RestringBy Worked(ForecastInput racket) => RestringForecast.Work(racket, Strung, new StartingValues());

    private static ForecastInput Racket(double times) => new()
    {
        Sport = Sport.Tennis,
        Racket = RacketState.InTurn,
        Play = new Play((decimal)times, 1.5m, Hitting.Average),
        Share = 1,
        Bed = Bed.Of(Polyester),
        Mains = 16,
        StrungOn = Strung,
    };
}
