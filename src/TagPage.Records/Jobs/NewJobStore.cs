using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Records.Condition;
using TagPage.Records.Deeds;
using TagPage.Records.Money;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Takes a racket in: what is known about it, and the new job. Only the shop may.</summary>
public sealed class NewJobStore(Database database, ShopStore shops, ShopClock clock)
{
    public sealed record RacketRow
    {
        public long Id { get; init; }
        public int Number { get; init; }
        public string Frame { get; init; } = "";
        public string TapeColour { get; init; } = "";
        public Sport Sport { get; init; }
        public RacketState State { get; init; }
        public int? PatternMains { get; init; }
        public int? PatternCrosses { get; init; }
        public long PlayerId { get; init; }
        public string RacketNote { get; init; } = "";
        public string PlayerNote { get; init; } = "";
        public string ClientNote { get; init; } = "";
        public string Player { get; init; } = "";
        public bool Junior { get; init; }

        /// <summary>A name the guardian agreed to; empty for none.</summary>
        public string LabelName { get; init; } = "";
        public long ClientId { get; init; }
        public string Client { get; init; } = "";

        /// <summary>A job of this racket that is still on the bench.</summary>
        public long? OpenJobId { get; init; }
        public long? OpenTicket { get; init; }

        /// <summary>A job of this racket that is strung and was not handed out.</summary>
        public long? ReadyTicket { get; init; }

        /// <summary>Marked as lost, as far as anybody knows.</summary>
        public bool IsLost { get; init; }

        /// <summary>The client announced it, and it has not been brought yet.</summary>
        public bool OpenIsExpected { get; init; }

        /// <summary>The racket's last job, or the player's last one in this sport.</summary>
        public long? LastJobId { get; init; }

        /// <summary>Asked before another ticket is opened for it.</summary>
        /// <param name="place">In the form.</param>
        public IEnumerable<Oddity> SecondTicket(string place) => this switch
        {
            { OpenTicket: { } open } => [new OnBenchAlready(place, open)],
            { ReadyTicket: { } ready } => [new NotCollectedYet(place, ready)],
            _ => [],
        };
    }

    public RacketRow? Racket(Who who, long id) => database.Read(c => Racket(c, who, id));

    /// <summary>Whether this form made a job already.</summary>
    public bool IsSent(string formKey) => database.Read(c => FormKeys.IsUsed(c, formKey));

    public BedStore.Open? CurrentBed(long racketId) => database.Read(c => BedStore.Current(c, racketId));

    internal static RacketRow? Racket(SqliteConnection connection, Who who, long id) =>
        connection.QuerySingleOrDefault<RacketRow>(RacketSql, new { who.IsShop, id });

    private const string RacketSql = $"{Select} WHERE r.id = @id AND @IsShop";

    /// <summary>SQL: of rackets <c>r</c> of clients <c>c</c>; a WHERE follows.</summary>
    internal const string Select = $"""
        SELECT r.id, r.number, r.frame, r.tape_colour, r.sport, r.state, r.pattern_mains, r.pattern_crosses,
               r.player_id, r.note AS racket_note, p.note AS player_note, c.note AS client_note, p.name AS player, p.junior, p.label_name, c.id AS client_id, c.name AS client, o.id AS open_job_id, o.ticket AS open_ticket,
               (SELECT MAX(j.ticket) FROM job j WHERE j.racket_id = r.id AND j.state = 'Strung') AS ready_ticket, r.lost_since IS NOT NULL AS is_lost,
               EXISTS (SELECT 1 FROM job_request q WHERE q.job_id = o.id AND q.expected = 1) AS open_is_expected,
               COALESCE(
                 {RequestedJob.Last},
                 (SELECT j.id FROM racket s JOIN job j ON j.racket_id = s.id
                  WHERE s.player_id = r.player_id AND s.sport = r.sport AND j.state <> 'Cancelled' AND j.mains_id IS NOT NULL
                  ORDER BY COALESCE(j.strung_on, j.received_on) DESC, j.id DESC LIMIT 1)) AS last_job_id
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        LEFT JOIN job o ON o.id = (SELECT MAX(j.id) FROM job j WHERE j.racket_id = r.id AND j.state IN ('Waiting', 'OnMachine'))
        """;

    public Outcome Add(Who who, long racketId, NewJobEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.Write(c => Racket(c, who, racketId) is { } racket
            ? FormKeys.Once(c, who, input.FormKey, now, () => Add(c, who, racket, input, (now, today), shops.Get()))
            : new Outcome.Absent());
    }

    /// <summary>For a write that makes more than the job; within its transaction.</summary>
    internal static Outcome Add(SqliteConnection connection, Who who, RacketRow racket, NewJobEntry input, (DateTimeOffset Now, DateOnly Today) at, ShopDetails shop)
    {
        var bed = BedStore.Current(connection, racket.Id);
        if (WhyNot(connection, racket, input, at.Today, shop) is { } why)
            return new Outcome.Refused(why);
        var (strings, refused) = StringPickStore.Pick(connection, input);
        if (strings is null)
            return refused!;
        if (bed is not null && input is { OldReading: { } reading, OldInstrumentId: { } instrument })
            ReadingStore.Add(connection, Who.Shop, bed.JobId, new ReadingEntry { TakenOn = input.OldReadOn, Value = reading, InstrumentId = instrument });
        if (bed is not null && input.OldEndedHow is { } how)
            BedStore.End(connection, bed.JobId, input.OldEndedOn ?? input.ReceivedOn, how);
        var values = new NewJobValues(racket.Id, input, strings, shop);
        var job = connection.ExecuteScalar<long>(AddSql, values);
        JobStopStore.Set(connection, job, input.Stops);
        var list = PriceListStore.Get(connection);
        ChargeLineStore.Replace(connection, job, input.IsPricedWhole && values.PriceMinor is { } whole ? [list.Whole(whole)] : list.Lines(Priced(racket.Sport, input, values), values.PriceMinor), who, at.Now);
        if (input.Confirmed)
            RangeConfirmStore.Note(connection, job, at.Now);
        JobDeedStore.Note(connection, who, job, JobDeed.TakenIn, at.Now);
        ConditionStore.Note(connection, who, job, input.Condition, at.Now);
        PhotoStore.Add(connection, who, job, input.Photos, at.Now);
        return new Outcome.Done(job);
    }

    /// <summary>What stands against the job, a string typed in with it apart; within the caller's transaction.</summary>
    internal static Refusal? WhyNot(SqliteConnection connection, RacketRow racket, NewJobEntry input, DateOnly today, ShopDetails shop) =>
        input.Faults(racket.Sport, shop, today, BedStore.Current(connection, racket.Id)).FirstOrDefault()
        ?? (Refusal?)(input.OldReading is not null && !ReadingStore.HasInstrument(connection, input.OldInstrumentId) ? new InstrumentUnknown(nameof(input.OldInstrumentId)) : null)
        ?? (Refusal?)(input.Photos.Count > PhotoStore.MostOfJob ? new TooManyPhotos(PhotoStore.MostOfJob, PhotoStore.MostOfJob) : null)
        ?? StringPickStore.WhyUnknown(connection, input)
        ?? JobStopStore.WhyNot(connection, input.Stops, null);

    private static PricedJob Priced(Sport sport, NewJobEntry input, NewJobValues values) => new()
    {
        Sport = sport,
        MainsId = values.MainsId,
        CrossesId = values.CrossesId,
        MainsByShop = values.MainsSuppliedBy == nameof(Supplier.Shop),
        CrossesByShop = values.CrossesSuppliedBy == nameof(Supplier.Shop),
        Extras = input.Extras,
    };

    private const string AddSql = $"""
        INSERT INTO job (ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by,
                         mains_tension, crosses_tension, tension_unit, mains_pre_stretch, crosses_pre_stretch, pieces,
                         received_on, received_where, promised_for, note)
        VALUES ({RequestedJob.NextTicket}, @RacketId, 'Waiting', @MainsId, @CrossesId, @MainsSuppliedBy,
                @CrossesSuppliedBy, @MainsTension, @CrossesTension, @TensionUnit, @MainsPreStretch, @CrossesPreStretch, @Pieces,
                @ReceivedOn, @ReceivedWhere, @PromisedFor, @Note)
        RETURNING id
        """;
}
