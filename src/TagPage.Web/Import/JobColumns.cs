using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Units;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>The columns of jobs.csv.</summary>
internal static class JobColumns
{
    public static readonly Column<int?> Ticket = new("ticket", Kinds.Whole(1, ImportLimits.MostTicket), "The job’s number; each only once in the shop.") { Needed = true };
    public static readonly Column<string> Racket = new("racket", CellKinds.Key, "The key of a racket.") { Needed = true };
    public static readonly Column<JobState?> State = new("state", Kinds.OneOf<JobState>(), "Empty means what the dates say.");
    public static readonly Column<string> Mains = new("mains_string", CellKinds.Key, "The key of a string.") { Needed = true };
    public static readonly Column<string> Crosses = new("crosses_string", CellKinds.Key, "Empty means the same as the mains.");
    public static readonly Column<Supplier?> MainsBy = new("mains_supplied_by", Kinds.OneOf<Supplier>(), "Who brought the string. Empty means shop.");
    public static readonly Column<Supplier?> CrossesBy = new("crosses_supplied_by", Kinds.OneOf<Supplier>(), "Empty means the same as the mains.");
    public static readonly Column<decimal?> MainsTension = new("mains_tension", Kinds.Number(1, 100, 2), "As set on the machine.") { Needed = true };
    public static readonly Column<decimal?> CrossesTension = new("crosses_tension", Kinds.Number(1, 100, 2), "Empty means the same as the mains.");
    public static readonly Column<TensionUnit?> TensionUnit = new("tension_unit", Kinds.OneOf<TensionUnit>(), "Empty means the shop’s own unit.");
    public static readonly Column<int?> MainsPreStretch = new("mains_pre_stretch_percent", Kinds.Whole(0, 30), "Empty means 0.");
    public static readonly Column<int?> CrossesPreStretch = new("crosses_pre_stretch_percent", Kinds.Whole(0, 30), "Empty means the same as the mains.");
    public static readonly Column<int?> Pieces = new("pieces", Kinds.Whole(1, 2), "One piece or two. Empty means 2.");
    public static readonly Column<DateOnly?> ReceivedOn = new("received_on", Kinds.Day, "The day it came in. Empty means the day it was strung.");
    public static readonly Column<string> ReceivedWhere = new("received_where", Kinds.Line(60), "Shop, club desk, …");
    public static readonly Column<DateOnly?> PromisedFor = new("promised_for", Kinds.Day, "The day it was promised for.");
    public static readonly Column<DateOnly?> StrungOn = new("strung_on", Kinds.Day, "The day it was strung.");
    public static readonly Column<string> StrungBy = new("strung_by", Kinds.Line(60), "Who strung it.");
    public static readonly Column<string> Machine = new("machine", Kinds.Line(60), "On which machine.");
    public static readonly Column<DateOnly?> CollectedOn = new("collected_on", Kinds.Day, "The day it was collected.");
    public static readonly Column<decimal?> Price = new("price", Kinds.Number(0, ImportLimits.MostPrice, 3), "In the shop’s currency.");
    public static readonly Column<DateOnly?> PaidOn = new("paid_on", Kinds.Day, "The day it was paid.");
    public static readonly Column<PaymentMethod?> PaidHow = new("paid_how", Kinds.OneOf<PaymentMethod>(), "Empty means nobody knows any more.");
    public static readonly Column<decimal?> Reading = new("reading", Kinds.Number(0.01m, 4999, 2), "Measured right after stringing.");
    public static readonly Column<string> Instrument = new("instrument", Kinds.Line(40), "What it was measured with. A name ending in Hz measures pitch, any other name stiffness.");
    public static readonly Column<string> Note = new("note", Kinds.Note(ImportLimits.Note), "Only the shop sees it.");
    public static readonly Column<DateOnly?> EndedOn = new("ended_on", Kinds.Day, "The day these strings broke or came out.");
    public static readonly Column<BedEnd?> EndedHow = new("ended_how", Kinds.OneOf<BedEnd>(), "How they ended.");

    public static IReadOnlyList<Column> All { get; } =
    [
        Ticket, Racket, State, Mains, Crosses, MainsBy, CrossesBy, MainsTension, CrossesTension, TensionUnit, MainsPreStretch, CrossesPreStretch, Pieces,
        ReceivedOn, ReceivedWhere, PromisedFor, StrungOn, StrungBy, Machine, CollectedOn, Price, PaidOn, PaidHow, Reading, Instrument, Note, EndedOn, EndedHow,
    ];
}
