using Dapper;
using TagPage.Core.Jobs;
using TagPage.Records.DueDates;
using TagPage.Records.Storage;

namespace TagPage.Records.Players;

/// <summary>A player's rackets with all that their dates depend on.</summary>
public sealed class PlayerPageStore(Database database)
{
    public sealed record Racket : ForecastRow
    {
        public int Number { get; init; }
        public string Frame { get; init; } = "";
        public string TapeColour { get; init; } = "";
    }

    /// <summary>From stringing to the end of one bed.</summary>
    public sealed record Bed
    {
        public int Number { get; init; }
        public long JobId { get; init; }
        public DateOnly StrungOn { get; init; }

        public DateOnly? EndedOn { get; init; }
        public BedEnd? EndedHow { get; init; }

        /// <summary>The day the next strings went into the same racket.</summary>
        public DateOnly? NextOn { get; init; }
        public decimal? HoursPlayed { get; init; }
        public string Mains { get; init; } = "";

        /// <summary>Null while the strings are in. Those whose end nobody noted ended with the next.</summary>
        public DateOnly? Until => EndedOn ?? NextOn;

        public BedEnd? How => EndedHow ?? (NextOn is null ? null : BedEnd.Unknown);

        public int DaysBy(DateOnly today) => Math.Max(0, (Until ?? today).DayNumber - StrungOn.DayNumber);
    }

    public IReadOnlyList<Racket> Rackets(long player) => database.Read(c => Histories.Into(c, c.Query<Racket>(RacketsSql, new { player })));

    private const string RacketsSql = $"""
        SELECT {ForecastRow.Columns}, r.number, r.frame, r.tape_colour
        FROM racket r
        JOIN forecast f ON f.racket_id = r.id
        WHERE r.player_id = @player
        ORDER BY r.state IN ('Sold', 'Gone'), r.number
        """;

    /// <summary>The newest beds of all the player's rackets, the newest first.</summary>
    public IReadOnlyList<Bed> Beds(long player, int most) => database.Read(c => c.Query<Bed>(BedsSql, new { player, most }).AsList());

    private const string BedsSql = """
        SELECT r.number, j.id AS job_id, j.strung_on, j.ended_on, j.ended_how, j.hours_played, m.name AS mains,
               LEAD(j.strung_on) OVER (PARTITION BY j.racket_id ORDER BY j.strung_on, j.id) AS next_on
        FROM racket r
        JOIN job j ON j.racket_id = r.id AND j.strung_on IS NOT NULL
        JOIN string_kind m ON m.id = j.mains_id
        WHERE r.player_id = @player
        ORDER BY j.strung_on DESC, j.id DESC
        LIMIT @most
        """;
}
