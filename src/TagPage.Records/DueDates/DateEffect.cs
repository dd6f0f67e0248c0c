using TagPage.Core.Forecast;

namespace TagPage.Records.DueDates;

/// <summary>A racket named in the effect of a change.</summary>
public sealed record EffectRow : ForecastRow
{
    public int Number { get; init; }
    public string Player { get; init; } = "";
}

/// <summary>A date that would move.</summary>
public sealed record DateMove(EffectRow Racket, RestringBy Now, RestringBy Then)
{
    /// <summary>Days to a later date, negative to an earlier one; null where a date would come or go.</summary>
    public int? Days => Then.Due?.DayNumber - Now.Due?.DayNumber;
}

/// <summary>What other starting values would change in the restring-by dates of all rackets in play.</summary>
public sealed record DateEffect
{
    /// <summary>Dates shown, those that move furthest.</summary>
    public const int MostShown = 8;

    public int Rackets { get; private set; }
    public int Earlier { get; private set; }
    public int Later { get; private set; }

    /// <summary>Due soon or past their date as things stand, and with the other values.</summary>
    public int DueNow { get; private set; }
    public int DueThen { get; private set; }

    public IReadOnlyList<DateMove> Furthest { get; private set; } = [];

    public int Moved => Earlier + Later;

    /// <summary>Adds some rackets to the sum.</summary>
    public void Add(IEnumerable<EffectRow> rackets, DateOnly today, StartingValues now, StartingValues then)
    {
        var moves = rackets.Select(r => new DateMove(r, r.Work(today, now), r.Work(today, then))).ToList();
        Rackets += moves.Count;
        DueNow += moves.Count(m => m.Now.IsDue);
        DueThen += moves.Count(m => m.Then.IsDue);
        Earlier += moves.Count(m => m.Days < 0 || m is { Now.Due: null, Then.Due: not null });
        Later += moves.Count(m => m.Days > 0 || m is { Now.Due: not null, Then.Due: null });
        Furthest = [.. Furthest.Concat(moves.Where(m => m.Now.Due != m.Then.Due)).OrderByDescending(m => Math.Abs(m.Days ?? int.MaxValue)).Take(MostShown)];
    }
}
