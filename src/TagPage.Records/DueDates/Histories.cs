using System.Globalization;
using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Jobs;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Strings;

namespace TagPage.Records.DueDates;

/// <summary>Fetches what forecasts learn from, for any number of rackets at once.</summary>
public static class Histories
{
    /// <summary>Gives each row its history.</summary>
    public static List<T> Into<T>(SqliteConnection connection, IEnumerable<T> rows) where T : ForecastRow
    {
        var all = rows.AsList();
        if (all.Count == 0)
            return all;
        var players = JsonSerializer.Serialize(all.Select(row => row.PlayerId).Distinct());
        using var found = connection.QueryMultiple(Sql, new { players });
        var pauses = found.Read<PauseRow>().ToLookup(p => p.PlayerId, p => new Pause(p.FromOn, p.ToOn));
        var logged = found.Read<LoggedRow>().ToLookup(h => h.RacketId, h => new LoggedHours(h.PlayedOn, h.Hours));
        var left = found.Read<LeftRow>().ToLookup(l => l.PlayerId, l => new LeftPlay(l.RacketId, l.LeftOn, l.PlayedAs));
        var jobs = Jobs(found.Read<JobRow>(), found.Read<ReadingRow>());
        foreach (var row in all)
            row.History = new RacketHistory { Pauses = [.. pauses[row.PlayerId]], Logged = [.. logged[row.RacketId]], Left = [.. left[row.PlayerId]], Jobs = [.. jobs[row.PlayerId]] };
        return all;
    }

    /// <summary>The same for one row, or none.</summary>
    public static T? Into<T>(SqliteConnection connection, T? row) where T : ForecastRow =>
        row is null ? null : Into<T>(connection, [row])[0];

    private static ILookup<long, JobHistory> Jobs(IEnumerable<JobRow> jobs, IEnumerable<ReadingRow> readings)
    {
        var ofJob = readings.ToLookup(reading => reading.JobId, reading => reading.ToReading());
        return jobs.ToLookup(job => job.PlayerId, job => new JobHistory
        {
            Id = job.JobId,
            Mains = job.Material,
            Ended = job.EndedHow,
            Hours = job.HoursPlayed,
            Readings = [.. ofJob[job.JobId]],
        });
    }

    private sealed record PauseRow
    {
        public long PlayerId { get; init; }
        public DateOnly FromOn { get; init; }
        public DateOnly? ToOn { get; init; }
    }

    private sealed record LoggedRow
    {
        public long RacketId { get; init; }
        public DateOnly PlayedOn { get; init; }
        public double Hours { get; init; }
    }

    private sealed record LeftRow
    {
        public long PlayerId { get; init; }
        public long RacketId { get; init; }
        public DateOnly LeftOn { get; init; }
        public RacketState PlayedAs { get; init; }
    }

    private sealed record JobRow
    {
        public long PlayerId { get; init; }
        public long JobId { get; init; }
        public Material Material { get; init; }
        public BedEnd? EndedHow { get; init; }
        public double? HoursPlayed { get; init; }
    }

    private sealed record ReadingRow
    {
        public long JobId { get; init; }
        public bool First { get; init; }
        public DateOnly TakenOn { get; init; }
        public string? TakenAt { get; init; }
        public long InstrumentId { get; init; }
        public ReadingScale Scale { get; init; }
        public double Value { get; init; }
        public double? Hours { get; init; }
        public long Id { get; init; }
        public bool? Doubtful { get; init; }

        public BedReading ToReading() => new()
        {
            Id = Id,
            IsDoubtful = Doubtful ?? true,
            IsFirst = First,
            Day = TakenOn,
            Time = TakenAt is null ? null : TimeOnly.ParseExact(TakenAt, "HH:mm", CultureInfo.InvariantCulture),
            InstrumentId = InstrumentId,
            Scale = Scale,
            Value = Value,
            Hours = Hours,
        };
    }

    // Only readings that can be compared with another: a first one alone teaches nothing.
    private const string Sql = """
        SELECT player_id, from_on, to_on
        FROM pause
        WHERE player_id IN (SELECT value FROM json_each(@players))
        ORDER BY from_on, id;

        SELECT h.racket_id, h.played_on, h.hours
        FROM racket r
        JOIN logged_hours h ON h.racket_id = r.id
        WHERE r.player_id IN (SELECT value FROM json_each(@players))
        ORDER BY h.played_on, h.id;

        SELECT player_id, id AS racket_id, left_on, played_as
        FROM racket
        WHERE player_id IN (SELECT value FROM json_each(@players)) AND left_on IS NOT NULL
        ORDER BY left_on, id;

        SELECT r.player_id, j.id AS job_id, m.material, j.ended_how, j.hours_played
        FROM racket r
        JOIN job j ON j.racket_id = r.id AND j.strung_on IS NOT NULL
        JOIN string_kind m ON m.id = j.mains_id
        WHERE r.player_id IN (SELECT value FROM json_each(@players))
        ORDER BY j.strung_on, j.id;

        SELECT j.id AS job_id, g.id, g.first, g.taken_on, g.taken_at, g.instrument_id, i.scale, g.value, g.hours, g.doubtful
        FROM racket r
        JOIN job j ON j.racket_id = r.id AND j.strung_on IS NOT NULL
        JOIN reading g ON g.job_id = j.id
        JOIN instrument i ON i.id = g.instrument_id
        WHERE r.player_id IN (SELECT value FROM json_each(@players))
          AND EXISTS (SELECT 1 FROM reading l WHERE l.job_id = j.id AND l.first = 0)
        ORDER BY g.taken_on, g.id;
        """;
}
