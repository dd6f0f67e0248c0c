using CsCheck;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast;

public class ForecastPropertyTests
{
    // From some play on: without any, hours have no say.
    [Fact]
    public void More_play_never_moves_the_date_later() =>
        Gen.Select(Rackets, Gen.Decimal[0, 10], Gen.Decimal[0, 4], Gen.Enum<RestringRule>()).Sample(
            (racket, moreTimes, moreHours, rule) =>
            {
                var less = racket with { Rule = rule is RestringRule.FixedDate ? RestringRule.WhicheverFirst : rule };
                var more = less with
                {
                    Play = less.Play with
                    {
                        TimesAWeek = less.Play.TimesAWeek + moreTimes,
                        HoursATime = less.Play.HoursATime + moreHours,
                    },
                };
                return more.AfterDays(0).Due <= less.AfterDays(0).Due;
            });

    [Fact]
    public void The_date_is_never_before_the_strings_went_in_nor_moves_with_the_day_one_looks() =>
        Gen.Select(Rackets, Gen.Int[-10, 4000]).Sample((racket, days) =>
            racket.AfterDays(days).Due >= Case.Strung && racket.AfterDays(days).Due == racket.AfterDays(0).Due);

    [Fact]
    public void The_date_is_the_earliest_that_counts() =>
        Rackets.Sample(racket =>
        {
            var forecast = racket.AfterDays(0);
            return forecast.Due == forecast.Limits.Where(limit => limit.Counts).Min(limit => limit.Day)
                && forecast.Limits.Any(limit => limit.Counts && limit.Kind == forecast.DecidedBy && limit.Day == forecast.Due);
        });

    [Fact]
    public void The_owners_date_always_wins() =>
        Gen.Select(Rackets, Gen.Int[0, 5000], Gen.Enum<RestringRule>()).Sample((racket, days, rule) =>
            (racket with { Rule = rule, OwnersDate = Case.Strung.AddDays(days) }).AfterDays(3)
                is { DecidedBy: LimitKind.OwnersDate } forecast && forecast.Due == Case.Strung.AddDays(days));

    [Fact]
    public void Day_by_day_a_racket_goes_from_good_to_due_soon_to_past_and_never_back() =>
        Rackets.Sample(racket =>
        {
            var days = Enumerable.Range(0, 240).Select(racket.AfterDays).ToList();
            return days.Zip(days.Skip(1)).All(pair =>
                pair.First.State <= pair.Second.State && pair.First.LifeLeft >= pair.Second.LifeLeft);
        }, iter: 200);

    private static readonly Gen<BedString> Parts =
        Gen.Select(Gen.Enum<Material>(), Gen.Decimal[0.6m, 1.5m]).Select((material, gauge) => new BedString(material, gauge));

    private static readonly Gen<ForecastInput> Rackets =
        Gen.Select(
            Gen.Select(Gen.Enum<Sport>(), Parts, Parts, Gen.Int[10, 24]),
            Gen.Select(Gen.Decimal[0.1m, 12], Gen.Decimal[0.1m, 4], Gen.Enum<Hitting>()),
            Gen.Select(Gen.Double[0.05, 1], Gen.Int[1, 60], Gen.Bool))
        .Select((racket, play, rest) => new ForecastInput
        {
            Sport = racket.Item1,
            Racket = rest.Item3 ? RacketState.InTurn : RacketState.Spare,
            Bed = new Bed(racket.Item2, racket.Item3),
            Mains = racket.Item4,
            Play = new Play(play.Item1, play.Item2, play.Item3),
            Share = rest.Item1,
            EveryWeeks = rest.Item2,
            StrungOn = Case.Strung,
        });
}
