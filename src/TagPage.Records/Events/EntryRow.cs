using TagPage.Core.EventDesk;
using TagPage.Core.Jobs;
using TagPage.Core.Players;
using TagPage.Core.Sports;
using TagPage.Core.Units;

namespace TagPage.Records.Events;

/// <summary>A racket at the desk with its job.</summary>
public sealed record EntryRow
{
    /// <summary>SQL: everything of entries e, to be followed by a condition.</summary>
    internal const string Select = """
        SELECT e.job_id, e.event_id, e.number, e.team, e.came_at, e.needed_by, e.not_before, e.promised, e.moved_from, e.on_court, e.pulled_forward, e.kept_for,
               e.minutes, e.stencil, e.stencil_colour, e.lies, e.technician_id, e.started_at, e.strung_at, e.handed_at,
               j.state, j.version, j.ticket, j.racket_id, j.mains_tension, j.crosses_tension, j.tension_unit, j.mains_supplied_by, j.crosses_supplied_by,
               j.mains_pre_stretch, j.crosses_pre_stretch, j.pieces, j.price_minor, (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.job_id = j.id) AS laid_minor, j.paid_on, j.note, j.strung_by,
               j.mains_id, m.name AS mains_name, m.gauge_mm AS mains_gauge_mm, j.crosses_id, x.name AS crosses_name, x.gauge_mm AS crosses_gauge_mm,
               r.number AS racket_number, r.frame, r.tape_colour, r.sport, p.id AS player_id, p.name AS player, p.junior, p.label_name
        FROM event_entry e
        JOIN job j ON j.id = e.job_id
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN string_kind m ON m.id = j.mains_id
        JOIN string_kind x ON x.id = j.crosses_id
        """;

    public long JobId { get; init; }
    public long EventId { get; init; }
    public int Number { get; init; }
    public string Team { get; init; } = "";
    public DateTime CameAt { get; init; }
    public DateTime? NeededBy { get; init; }
    public DateTime? NotBefore { get; init; }
    public DateTime? Promised { get; init; }

    /// <summary>What was promised before, where the promise had to be moved and its owner was not told yet.</summary>
    public DateTime? MovedFrom { get; init; }
    public bool OnCourt { get; init; }
    public bool PulledForward { get; init; }
    public long? KeptFor { get; init; }
    public int? Minutes { get; init; }
    public string Stencil { get; init; } = "";
    public string StencilColour { get; init; } = "";

    /// <summary>Where it lies, as somebody noted it.</summary>
    public string Lies { get; init; } = "";
    public long? TechnicianId { get; init; }
    public DateTime? StartedAt { get; init; }
    public DateTime? StrungAt { get; init; }
    public DateTime? HandedAt { get; init; }

    public JobState State { get; init; }

    /// <summary>Of its job; every change at the desk counts it up.</summary>
    public int Version { get; init; }
    public long Ticket { get; init; }
    public long RacketId { get; init; }
    public long MainsId { get; init; }
    public string MainsName { get; init; } = "";
    public decimal MainsGaugeMm { get; init; }
    public Supplier MainsSuppliedBy { get; init; }
    public decimal MainsTension { get; init; }
    public int MainsPreStretch { get; init; }
    public long CrossesId { get; init; }
    public string CrossesName { get; init; } = "";
    public decimal CrossesGaugeMm { get; init; }
    public Supplier CrossesSuppliedBy { get; init; }
    public decimal CrossesTension { get; init; }
    public int CrossesPreStretch { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public int Pieces { get; init; }
    public long? PriceMinor { get; init; }
    public long LaidMinor { get; init; }
    public DateOnly? PaidOn { get; init; }
    public string Note { get; init; } = "";
    public string StrungBy { get; init; } = "";

    public int RacketNumber { get; init; }
    public string Frame { get; init; } = "";
    public string TapeColour { get; init; } = "";
    public Sport Sport { get; init; }
    public long PlayerId { get; init; }
    public string Player { get; init; } = "";
    public bool Junior { get; init; }
    public string LabelName { get; init; } = "";

    /// <summary>Still to be strung.</summary>
    public bool IsOpen => State is JobState.Waiting or JobState.OnMachine;

    public bool IsHybrid => MainsId != CrossesId;

    public bool IsUnpaid => PaidOn is null && PriceMinor is > 0;

    /// <summary>What of its price is still to be paid.</summary>
    public long OpenMinor => IsUnpaid ? PriceMinor!.Value - LaidMinor : 0;

    /// <summary>By the ticket, which may have been moved at the shop's bench.</summary>
    public bool IsStrung => State is JobState.Strung or JobState.Collected;

    /// <summary>To be paid now: it is strung.</summary>
    public bool IsOwed => IsUnpaid && IsStrung;

    /// <summary>Whose it is, as a tablet beside the court may show it.</summary>
    public string Whose => WhoseOnLabel.Of(Junior, Player, LabelName, RacketNumber, Number);

    /// <summary>Whether what is typed leaves all that its promise depends on as it is.</summary>
    public bool HasTimesOf(IntakeEntry input) =>
        (NeededBy, NotBefore, OnCourt, KeptFor, Minutes) == (input.NeededBy, input.NotBefore, input.OnCourt, input.KeptFor, input.Minutes);

    /// <summary>For the plan.</summary>
    /// <param name="now">When one that is on a machine was begun, if nobody noted it.</param>
    internal DeskEntry ToDesk(DateTime now) => new(Number, Sport)
    {
        Minutes = Minutes,
        NeededBy = NeededBy,
        Promised = Promised,
        NotBefore = NotBefore,
        OnCourt = OnCourt,
        PulledForward = PulledForward,
        KeptFor = KeptFor,
        On = State == JobState.OnMachine ? new OnMachine(TechnicianId ?? 0, StartedAt ?? now) : null,
    };
}
