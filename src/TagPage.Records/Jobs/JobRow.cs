using TagPage.Core.Jobs;
using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Core.Units;
using TagPage.Records.Money;
using TagPage.Records.Shop;

namespace TagPage.Records.Jobs;

/// <summary>A job with its racket and whose it is, as the shop's pages show it and the shop's mails tell of it.</summary>
public sealed record JobRow
{
    /// <summary>SQL: what a SELECT FROM job_card names.</summary>
    internal const string Columns = """
        id, ticket, state, version, racket_id, number, frame, tape_colour, sport, pattern_mains, pattern_crosses,
        racket_note, player_note, client_note,
        player, junior, client_id, client, client_mail, client_phone, client_language, payer_id, payer,
        mains_id, mains_name, mains_material, mains_gauge_mm, mains_supplied_by, mains_tension,
        crosses_id, crosses_name, crosses_material, crosses_gauge_mm, crosses_supplied_by, crosses_tension,
        tension_unit, mains_pre_stretch, crosses_pre_stretch, pieces, received_on, received_where, promised_for, strung_on, strung_by, machine,
        told_ready_at, is_telling_failed, is_telling, started_at, strung_at, collected_on, is_visit, done_on, work, price_minor, laid_minor, paid_on, note, ended_on, ended_how,
        asked_in, asked_words, expected, drop_off_where, drop_off_by, needed_by, reading, instrument_id, instrument,
        left_at_id, left_at, collect_at_id, collect_at, fetched_at, brought_at
        """;

    public long Id { get; init; }
    public long Ticket { get; init; }
    public JobState State { get; init; }
    public int Version { get; init; }

    public long RacketId { get; init; }
    public int Number { get; init; }
    public string Frame { get; init; } = "";
    public string TapeColour { get; init; } = "";
    public Sport Sport { get; init; }
    public int? PatternMains { get; init; }
    public int? PatternCrosses { get; init; }

    /// <summary>The shop's own notes.</summary>
    public string RacketNote { get; init; } = "";
    public string PlayerNote { get; init; } = "";
    public string ClientNote { get; init; } = "";

    public string Player { get; init; } = "";
    public bool Junior { get; init; }
    public long ClientId { get; init; }
    public string Client { get; init; } = "";
    public string? ClientMail { get; init; }
    public string? ClientPhone { get; init; }
    public string ClientLanguage { get; init; } = "en";
    public long? PayerId { get; init; }
    public string? Payer { get; init; }

    public long MainsId { get; init; }
    public string MainsName { get; init; } = "";
    public Material MainsMaterial { get; init; }
    public decimal MainsGaugeMm { get; init; }
    public Supplier MainsSuppliedBy { get; init; }
    public decimal MainsTension { get; init; }
    public long CrossesId { get; init; }
    public string CrossesName { get; init; } = "";
    public Material CrossesMaterial { get; init; }
    public decimal CrossesGaugeMm { get; init; }
    public Supplier CrossesSuppliedBy { get; init; }
    public decimal CrossesTension { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public int MainsPreStretch { get; init; }
    public int CrossesPreStretch { get; init; }
    public int Pieces { get; init; }

    public DateOnly ReceivedOn { get; init; }
    public string ReceivedWhere { get; init; } = "";
    public DateOnly? PromisedFor { get; init; }
    public DateOnly? StrungOn { get; init; }
    public string StrungBy { get; init; } = "";
    public string Machine { get; init; } = "";
    public DateOnly? CollectedOn { get; init; }


    /// <summary>Work on a racket whose strings stay in it: no strings, no tensions.</summary>
    public bool IsVisit { get; init; }

    /// <summary>When the work of a visit was done; null while it waits, and for a stringing.</summary>
    public DateOnly? DoneOn { get; init; }

    /// <summary>Of a visit, names with blanks.</summary>
    public string? Work { get; init; }

    public IReadOnlyList<VisitWork> Works => VisitWorks.Of(Work);

    /// <summary>Since when it could be collected.</summary>
    public DateOnly? ReadyOn => StrungOn ?? DoneOn;
    public long? PriceMinor { get; init; }

    /// <summary>What payments cover of it so far.</summary>
    public long LaidMinor { get; init; }

    /// <summary>When they came to cover it.</summary>
    public DateOnly? PaidOn { get; init; }
    public string Note { get; init; } = "";

    /// <summary>Null for a job that no client asked for; then the words are empty too and nothing is expected.</summary>
    public AskedIn? AskedIn { get; init; }
    public string AskedWords { get; init; } = "";

    /// <summary>The client said yes and has not brought the racket yet.</summary>
    public bool Expected { get; init; }
    public string DropOffWhere { get; init; } = "";
    public DateOnly? DropOffBy { get; init; }
    public DateOnly? NeededBy { get; init; }

    /// <summary>When the client was told that it is ready; null also where the email was given up.</summary>
    public DateTimeOffset? ToldReadyAt { get; init; }

    /// <summary>Whether the email that it is ready waits, or is tried again.</summary>
    public bool IsTelling { get; init; }

    /// <summary>Whether the email that it is ready was given up.</summary>
    public bool IsTellingFailed { get; init; }

    /// <summary>When it went on the machine, and when it came off, as far as that was pressed as it happened.</summary>
    public DateTimeOffset? StartedAt { get; init; }
    public DateTimeOffset? StrungAt { get; init; }
    public DateOnly? EndedOn { get; init; }
    public BedEnd? EndedHow { get; init; }

    public decimal? Reading { get; init; }
    public long? InstrumentId { get; init; }
    public string? Instrument { get; init; }

    /// <summary>What the price list is asked for; what comes on top of it apart.</summary>
    public PricedJob Priced => new()
    {
        Sport = Sport,
        MainsId = MainsId,
        CrossesId = CrossesId,
        MainsByShop = MainsSuppliedBy == Supplier.Shop,
        CrossesByShop = CrossesSuppliedBy == Supplier.Shop,
    };

    /// <summary>The stops where it was left and is to be collected; null for the shop's own bench.</summary>
    public long? LeftAtId { get; init; }
    public string? LeftAt { get; init; }
    public long? CollectAtId { get; init; }
    public string? CollectAt { get; init; }

    /// <summary>When it was fetched from where it was left, and brought to where it is collected.</summary>
    public DateTimeOffset? FetchedAt { get; init; }
    public DateTimeOffset? BroughtAt { get; init; }

    /// <summary>It lies where it was left and is still to be fetched.</summary>
    public bool IsToFetch => State == JobState.Waiting && !Expected && LeftAtId is not null && FetchedAt is null;

    /// <summary>It is ready and still to be brought to where it is collected.</summary>
    public bool IsToBring => State == JobState.Strung && CollectAtId is not null && BroughtAt is null;

    /// <summary>The stop at which it is; null while the technician has it, or the client.</summary>
    public string? IsAt => IsToFetch ? LeftAt : State == JobState.Strung && BroughtAt is not null ? CollectAt : null;

    public bool IsHybrid => MainsId != CrossesId;

    public Tension Mains => new(MainsTension, TensionUnit);

    public Tension Crosses => new(CrossesTension, TensionUnit);

    /// <summary>Whether the client was promised a day, still to come, on which the shop is closed.</summary>
    public bool IsPromisedClosed(Opening opening, DateOnly today) => IsOpen && PromisedFor is { } day && day >= today && !opening.IsOpen(day);

    /// <summary>Still to be paid; null without a price.</summary>
    public long? OpenMinor => PriceMinor - LaidMinor;

    public bool IsOpen => State is JobState.Waiting or JobState.OnMachine;
}
