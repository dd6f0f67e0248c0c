using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Readings;

/// <summary>Asks before a reading is saved: whether it lies far from what else was read on that racket, or on that instrument.</summary>
public sealed class UsualStore(Database database)
{
    /// <summary>
    /// How many times more or less than the others' middle is far. Pitch goes with the square root of tension (Mersenne's law), so
    /// that 1.5 in Hz is 2.25 in tension: a racket's own strings do not differ by that, nor other rackets of the sport by twice the
    /// number. Sports lie further apart: 540 Hz of a tennis racket and 1100 of a badminton racket are both usual. Common practice, no
    /// source.
    /// </summary>
    private const decimal OfRacket = 1.5m, OfSport = 2m, OfInstrument = 3m;

    /// <summary>From so many on, what the sport's rackets read says enough by itself.</summary>
    private const int Enough = 3;

    private sealed record Other
    {
        public decimal Value { get; init; }
        public bool Own { get; init; }
        public bool SameSport { get; init; }
        public string Instrument { get; init; } = "";
    }

    /// <param name="racket">Whose strings were measured.</param>
    /// <param name="instrument">On what.</param>
    /// <param name="value">The number read.</param>
    /// <param name="place">The entry's property for it.</param>
    /// <param name="firstOf">The job whose first reading it is and replaces.</param>
    /// <returns>Null where nothing speaks against it.</returns>
    public ReadingFar? Of(long racket, long? instrument, decimal? value, string place, long? firstOf = null)
    {
        if (instrument is null || value is not > 0)
            return null;
        var others = database.Read(c => c.Query<Other>(OthersSql, new { racket, instrument, firstOf }).AsList());
        var own = others.Where(other => other.Own).ToList();
        if (own.Count > 0)
            return Far(own, OfRacket);
        var ofSport = others.Where(other => other.SameSport).ToList();
        return Far(ofSport, OfSport) ?? (ofSport.Count < Enough ? Far(others, OfInstrument) : null);

        ReadingFar? Far(List<Other> those, decimal times)
        {
            if (those.Count == 0)
                return null;
            var sorted = those.OrderBy(other => other.Value).ToList();
            // Of an even number two stand in the middle; the nearer one says whether it is far.
            var middle = new[] { sorted[(sorted.Count - 1) / 2], sorted[sorted.Count / 2] }.MinBy(other => Math.Abs(other.Value - value.Value))!;
            var isFar = value > middle.Value * times || value * times < middle.Value;
            return isFar ? new ReadingFar(place, value.Value, middle.Value, middle.Own ? null : middle.Instrument) : null;
        }
    }

    /// <summary>The same for what a household heard on their phone, compared with what they heard on this racket before.</summary>
    public ReadingFar? OfPhones(long racket, decimal value, string place) =>
        Phones() is { } phones && Of(racket, phones, value, place) is { Instrument: null } far ? far : null;

    private long? Phones() => database.Read(c => c.ExecuteScalar<long?>("SELECT id FROM instrument WHERE kind = 'Phones'"));

    // Of the newest: what an instrument said years ago says little, and a busy one has tens of thousands.
    private const string OthersSql = """
        SELECT g.value, 0 AS own, r.sport = (SELECT sport FROM racket WHERE id = @racket) AS same_sport, i.name AS instrument
        FROM (SELECT id, job_id, first, instrument_id, value FROM reading WHERE instrument_id = @instrument ORDER BY id DESC LIMIT 200) g
        JOIN instrument i ON i.id = g.instrument_id
        JOIN job j ON j.id = g.job_id
        JOIN racket r ON r.id = j.racket_id
        WHERE NOT (g.first = 1 AND g.job_id IS @firstOf)
        UNION ALL
        SELECT g.value, 1, 1, i.name
        FROM job j
        JOIN reading g ON g.job_id = j.id AND g.instrument_id = @instrument
        JOIN instrument i ON i.id = g.instrument_id
        WHERE j.racket_id = @racket AND NOT (g.first = 1 AND g.job_id IS @firstOf)
        """;
}

/// <summary>Far from the others.</summary>
/// <param name="Place">The entry's property.</param>
/// <param name="Value">The number read.</param>
/// <param name="Usual">The middle of the others.</param>
/// <param name="Instrument">On which all others were read; null where they are this racket's own.</param>
public sealed record ReadingFar(string Place, decimal Value, decimal Usual, string? Instrument) : Oddity(Place);
