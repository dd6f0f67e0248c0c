using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Records.DueDates;

/// <summary>
/// One row of the view forecast: all that a racket's restring-by date depends on. Stores select the view's columns
/// with their own and let their row types inherit from this one.
/// </summary>
public record ForecastRow
{
    public long RacketId { get; init; }
    public long PlayerId { get; init; }
    public Sport Sport { get; init; }
    public RacketState State { get; init; }
    public int? PatternMains { get; init; }
    public DateOnly? OwnDate { get; init; }
    public decimal TimesAWeek { get; init; }
    public decimal HoursATime { get; init; }
    public Hitting Hitting { get; init; }
    public RestringRule? Rule { get; init; }
    public int? EveryWeeks { get; init; }
    public int InTurn { get; init; }
    public int Spare { get; init; }
    public DateOnly? StrungOn { get; init; }
    public DateOnly? EndedOn { get; init; }
    public Material? MainsMaterial { get; init; }
    public decimal? MainsGaugeMm { get; init; }
    public Material? CrossesMaterial { get; init; }
    public decimal? CrossesGaugeMm { get; init; }

    /// <summary>The job whose strings are in it; null where they are not the shop's.</summary>
    public long? BedId { get; init; }

    /// <summary>What the label of those strings says.</summary>
    public DateOnly? LabelDate { get; init; }

    /// <summary>What the date learns from; stores fetch it with <see cref="Histories"/>.</summary>
    public RacketHistory History { get; set; } = RacketHistory.None;

    /// <summary>The view's columns, for a SELECT from <c>forecast f</c>.</summary>
    public const string Columns = """
        f.racket_id, f.player_id, f.sport, f.state, f.pattern_mains, f.own_date, f.times_a_week, f.hours_a_time, f.hitting, f.rule,
        f.every_weeks, f.in_turn, f.spare, f.strung_on, f.ended_on, f.bed_id, f.label_date, f.mains_material, f.mains_gauge_mm,
        f.crosses_material, f.crosses_gauge_mm
        """;

    public RestringBy Work(DateOnly today, StartingValues values) => RestringForecast.Work(ToInput(values), today, values);

    /// <summary>
    /// The date as it would be, and the one a what-if begins with where nothing is supposed. The shop's own date is left out,
    /// since it overrules everything; without whole strings in it the racket counts as strung today.
    /// </summary>
    public RestringBy WhatIf(DateOnly today, StartingValues values, Func<ForecastInput, ForecastInput>? supposed = null)
    {
        var input = ToInput(values) with { OwnersDate = null, StrungOn = EndedOn is null ? StrungOn ?? today : today, BedEndedOn = null };
        return RestringForecast.Work(supposed is null ? input : History.AddTo(supposed(input)), today, values);
    }

    /// <summary>Hours played by a past day, on strings that went in on another; null if nobody can tell.</summary>
    public double? HoursBy(DateOnly strung, DateOnly day, StartingValues values) =>
        FrozenHours.By(ToInput(values) with { Share = FrozenHours.Share(State, InPlay, values.SpareWeight) }, strung, day);

    public ForecastInput ToInput(StartingValues values) => History.AddTo(new ForecastInput
    {
        Sport = Sport,
        Racket = State,
        Play = new Play(TimesAWeek, HoursATime, Hitting),
        Share = RacketShare.Of(State, InPlay, values.SpareWeight),
        EarlierShares = EarlierShare.Of(State, [.. InPlay], [.. History.Left.Where(other => other.RacketId != RacketId)], values.SpareWeight),
        Bed = MainsMaterial is { } mains && CrossesMaterial is { } crosses
            ? new Bed(new BedString(mains, MainsGaugeMm!.Value), new BedString(crosses, CrossesGaugeMm!.Value))
            : null,
        Mains = PatternMains,
        StrungOn = StrungOn,
        BedEndedOn = EndedOn,
        Rule = Rule,
        EveryWeeks = EveryWeeks,
        OwnersDate = OwnDate,
    });

    private IEnumerable<RacketState> InPlay =>
        Enumerable.Repeat(RacketState.InTurn, InTurn).Concat(Enumerable.Repeat(RacketState.Spare, Spare));
}
