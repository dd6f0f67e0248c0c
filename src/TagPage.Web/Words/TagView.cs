using TagPage.Core.Forecast;
using TagPage.Core.Sports;
using TagPage.Core.Tags;
using TagPage.Records.Shop;
using TagPage.Records.Tags;

namespace TagPage.Web.Words;

/// <summary>A racket as its public page shows it: no habits, no rule, nothing about people.</summary>
public sealed record TagView
{
    /// <summary>Earlier stringings shown, so that the page stays small.</summary>
    public const int MostEarlier = 12;

    /// <summary>Visits shown, for the same reason.</summary>
    public const int MostVisits = 5;

    public required TagCode Code { get; init; }
    public required int Number { get; init; }
    public required string TapeColour { get; init; }
    public required Sport Sport { get; init; }
    public required bool IsLost { get; init; }

    /// <summary>The public note of a lost racket; empty where it is not lost.</summary>
    public required string LostNote { get; init; }

    public required int Mains { get; init; }
    public required RestringState State { get; init; }
    public required DateOnly? Due { get; init; }
    public required int? DaysLeft { get; init; }
    public required double LifeLeft { get; init; }
    public required LimitKind? DecidedBy { get; init; }

    /// <summary>Nobody knows until when it is not played.</summary>
    public required bool PlayIsPaused { get; init; }

    /// <summary>How the tension drops; null where nobody can tell, and where the racket's rule leaves tension out.</summary>
    public required LossPicture? Loss { get; init; }

    public required DateOnly? StringsEndedOn { get; init; }

    /// <summary>Null unless somebody else strung it, about whom nothing more is known.</summary>
    public required DateOnly? ElsewhereOn { get; init; }

    /// <summary>The strings in the racket, or the last that were.</summary>
    public required StringingRow? Latest { get; init; }

    /// <summary>What it measures; null unless the shop shows it to everybody.</summary>
    public TagSpecRow? Spec { get; init; }

    /// <summary>Work on it without new strings, newest first.</summary>
    public IReadOnlyList<VisitOfTag> Visits { get; init; } = [];

    /// <summary>The owner's advice that fits these strings.</summary>
    public IReadOnlyList<CareStore.Link> Guides { get; init; } = [];

    public required IReadOnlyList<StringingRow> Earlier { get; init; }

    /// <summary>Stringings older than those in <see cref="Earlier"/>.</summary>
    public required int NotShown { get; init; }

    public static TagView Of(TagCode code, TagRow racket, IReadOnlyList<StringingRow> stringings, DateOnly today, StartingValues values)
    {
        var restring = racket.Work(today, values);
        var latest = stringings.Count > 0 ? stringings[0] : null;
        return new TagView
        {
            Code = code,
            Number = racket.Number,
            TapeColour = racket.TapeColour,
            Sport = racket.Sport,
            IsLost = racket.IsLost,
            LostNote = racket.IsLost ? racket.LostNote : "",
            Mains = racket.PatternMains ?? SportFacts.Of(racket.Sport).DrawnMains,
            State = restring.State,
            Due = restring.Due,
            DaysLeft = restring.DaysLeft,
            LifeLeft = restring.LifeLeft,
            DecidedBy = restring.DecidedBy,
            PlayIsPaused = restring.PlayIsPaused,
            Loss = restring.Limits.OfType<TensionLimit>().FirstOrDefault() is { Counts: true, Curve: { } curve }
                ? new LossPicture(curve, today, curve.Reaches(), [])
                : null,
            StringsEndedOn = racket.EndedOn,
            ElsewhereOn = racket.StrungOn > latest?.StrungOn ? racket.StrungOn : null,
            Latest = latest,
            Earlier = [.. stringings.Skip(1)],
            NotShown = (latest?.InAll ?? 0) - stringings.Count,
        };
    }
}
