using Dapper;
using TagPage.Core.Strings;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.PlayTime;

/// <summary>The pitch of the strings as a household hears it. The shop has instruments of its own.</summary>
public sealed class PitchStore(Database database, ShopClock clock)
{
    /// <summary>What readings of clients are taken on. They are never compared with those of the shop's instruments.</summary>
    public const string Instrument = "Clients’ phones";

    /// <summary>The lowest and the highest pitch of a strung bed that is taken, in Hz.</summary>
    public const int LowestHz = 300, HighestHz = 1400;

    public sealed record Pitch
    {
        public DateOnly TakenOn { get; init; }
        public double Value { get; init; }
    }

    /// <summary>What the household measured on the strings that are in the racket, oldest first.</summary>
    public IReadOnlyList<Pitch> Of(Who who, long job) => database.Read(c => c.Query<Pitch>(OfSql, new { who.ClientId, job, Instrument }).AsList());

    private const string OfSql = """
        SELECT g.taken_on, g.value
        FROM reading g
        JOIN instrument i ON i.id = g.instrument_id
        JOIN job j ON j.id = g.job_id
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE j.id = @job AND p.client_id = @ClientId AND i.name = @Instrument
        ORDER BY g.taken_on, g.id
        """;

    /// <summary>Of the strings that are in the racket, heard today; a form that is sent again keeps nothing more.</summary>
    public Outcome Add(Who who, long racket, decimal hertz, string formKey)
    {
        var today = clock.Today;
        return database.Write(c =>
        {
            if (who.ClientId is not { } client || OwnPageRacketStore.Get(c, client, racket) is not { IsMine: true, BedId: { } job, EndedOn: null })
                return new Outcome.Absent();
            if (hertz is < LowestHz or > HighestHz)
                return new Outcome.Refused(new PitchUnlikely(LowestHz, HighestHz));
            return FormKeys.Once(c, formKey, clock.Now, () =>
            {
                c.Execute("INSERT INTO instrument (name, scale) VALUES (@Instrument, @Scale) ON CONFLICT DO NOTHING", new { Instrument, Scale = nameof(ReadingScale.Hertz) });
                return (Outcome)new Outcome.Done(c.ExecuteScalar<long>(AddSql, new { job, today, Instrument, hertz }));
            });
        });
    }

    private const string AddSql = """
        INSERT INTO reading (job_id, first, taken_on, instrument_id, value)
        SELECT @job, 0, @today, id, @hertz FROM instrument WHERE name = @Instrument
        RETURNING id
        """;
}
