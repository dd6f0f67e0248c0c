using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
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
    [InlineData(1, "played once a week, at least 2 restrings a year: 182 days")]
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
        Assert.Equal("16.6 h of play (the shorter-lived of two strings) at 4.5 h a week: 25 days", Why<HoursLimit>("en", hybrid));
        Assert.Equal("no hours of play to count", Why<HoursLimit>("en", Racket(0)));
        Assert.Equal("the strings are not known, so neither is how long they last", Why<HoursLimit>("en", Racket(3) with { Bed = null }));
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
        Assert.Equal("the date the shop chose is older than these strings", Why<OwnersDateLimit>("en", Racket(3) with { OwnersDate = Strung.AddDays(-1) }));
    }

    [Fact]
    public void Every_limit_has_its_words_in_every_language() => Assert.All(Languages.All, language =>
    {
        var limits = Worked(Racket(3) with { EveryWeeks = 6, OwnersDate = Strung, Learned = Broken(12, 14) }).Limits;
        Assert.Equal(Enum.GetValues<LimitKind>().Order(), limits.Select(l => l.Kind).Order());
        Assert.All(limits, limit => Assert.DoesNotContain('{', language.Why(limit)));
        Assert.All(Enum.GetValues<LimitKind>(), kind => Assert.NotEmpty(language.Because(kind)));
    });

    [Theory]
    [InlineData("en", "25 % of the tension gone at 4.5 h a week, estimated from typical values: 30 days")]
    [InlineData("de", "die Spannung ist bei 4,5 Stunden in der Woche bis dahin um 25\u00A0% gesunken, Schätzung aus typischen Werten: 30 Tage")]
    public void Tension(string code, string why) => Assert.Equal(why, Why<TensionLimit>(code, Racket(3)));

    [Fact]
    public void Tension_says_what_it_was_learned_from_and_why_it_has_no_day()
    {
        var measured = Learned.Nothing with { Beds = [[new(14, 7, 15), new(30, 15, 22)], [new(21, 10, 17.5)]] };
        Assert.Equal("25 % of the tension gone at 4.5 h a week, learned from 3 readings: 31 days", Why<TensionLimit>("en", Racket(3) with { Learned = measured }));
        Assert.Equal("no hours of play to count", Why<TensionLimit>("en", Racket(0)));
        Assert.Equal("the strings are not known, so neither is how long they last", Why<TensionLimit>("en", Racket(3) with { Bed = null }));
        Assert.Equal("tension does not fall by 25 % within two years", Why<TensionLimit>("en", Racket(0.01)));
    }

    [Fact]
    public void Breakage_lists_the_breaks_and_says_what_follows_once_there_are_two()
    {
        Assert.Equal("broke after 12 hours in the past; too few breaks to go by", Why<BreakageLimit>("en", Racket(3) with { Learned = Broken(12) }));
        Assert.Equal("broke after 12, 14 and 16.5 hours: one in 5 would break by 11.2 hours, which is 17 days", Why<BreakageLimit>("en", Racket(3) with { Learned = Broken(14, 16.5, 12) }));
        Assert.Equal("broke after 12 and 14 hours: one in 5 would break by 10.7 hours", Why<BreakageLimit>("en", Racket(0) with { Learned = Broken(14, 12) }));
    }

    [Fact]
    public void Breakage_says_how_many_beds_came_out_whole_which_the_estimate_counts_too()
    {
        var one = Why<BreakageLimit>("en", Racket(0) with { Learned = Broken(14, 12) with { CameOutAfter = [16] } });
        var three = Why<BreakageLimit>("en", Racket(0) with { Learned = Broken(14, 12) with { CameOutAfter = [16, 18, 20] } });
        Assert.StartsWith("broke after 12 and 14 hours, and 1 bed came out before wear broke it: one in 5 would break by ", one, StringComparison.Ordinal);
        Assert.StartsWith("broke after 12 and 14 hours, and 3 beds came out before wear broke them: one in 5 would break by ", three, StringComparison.Ordinal);
        Assert.True(double.Parse(one.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture) < double.Parse(three.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Hours_say_what_was_noted_and_that_pauses_are_left_out()
    {
        var noted = Racket(3) with { Logged = [new LoggedHours(Strung, 4)] };
        Assert.Equal("18 h of play, 4 h so far including the hours logged, then 4.5 h a week: 21 days", Why<HoursLimit>("en", noted));
        var paused = Racket(3) with { Pauses = [new Pause(Strung.AddDays(3), Strung.AddDays(9))] };
        Assert.Equal("18 h of play at 4.5 h a week: 35 days, not counting pauses", Why<HoursLimit>("en", paused));
        var open = Racket(3) with { Pauses = [new Pause(Strung.AddDays(3), null)] };
        Assert.Equal("play is paused, so the hours stand still", Why<HoursLimit>("en", open));
    }

    [Fact]
    public void Age_says_its_days_and_a_limit_without_a_say_that_it_has_none()
    {
        var limits = Worked(Racket(3) with { Rule = RestringRule.TimesAWeek }).Limits;
        Assert.Equal("strings should not get older than 365 days", Languages.English.WhyWithSay(limits.OfType<AgeLimit>().Single()));
        Assert.EndsWith(", not counted under this rule", Languages.English.WhyWithSay(limits.OfType<TensionLimit>().Single()), StringComparison.Ordinal);
    }

    private static Learned Broken(params double[] hours) => Learned.Nothing with { BrokeAfter = hours };

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
