using TagPage.Core.Jobs;
using TagPage.Core.Players;
using TagPage.Core.Sports;
using TagPage.Core.Tags;
using TagPage.Core.Units;
using TagPage.Records.Specs;

namespace TagPage.Records.Labels;

/// <summary>A racket as its labels know it.</summary>
public sealed record LabelRow
{
    public long RacketId { get; init; }
    public int Number { get; init; }
    public Sport Sport { get; init; }
    public string Frame { get; init; } = "";
    public string TapeColour { get; init; } = "";

    /// <summary>Of the tape its labels are printed on; empty for the shop's usual one, whatever colour the racket has.</summary>
    public string LabelTape { get; init; } = "";
    public string LabelInk { get; init; } = "";
    public string LabelLine { get; init; } = "";
    public long PlayerId { get; init; }
    public string PlayerName { get; init; } = "";
    public bool Junior { get; init; }
    public string LabelName { get; init; } = "";
    public TagCode? Code { get; init; }
    public JobPart? Job { get; init; }

    /// <summary>The ticket that waits for it to be strung.</summary>
    public WaitingPart? Waiting { get; init; }

    /// <summary>What the racket measured last.</summary>
    public SpecEntry? Spec { get; init; }

    /// <summary>The same beside the number of the ticket that waits.</summary>
    public string WhoseWaits => WhoseOnLabel.Of(Junior, PlayerName, LabelName, Number, null);

    public string Whose => WhoseOnLabel.Of(Junior, PlayerName, LabelName, Number, Job?.Ticket);

    /// <summary>The same without racket and ticket, where the label says the racket's number already.</summary>
    public string WhoseName => WhoseOnLabel.Name(Junior, PlayerName, LabelName);

    /// <summary>An order that is still to be strung, or a visit that waits.</summary>
    public sealed record WaitingPart
    {
        public long Id { get; init; }
        public long Ticket { get; init; }
        public DateOnly? PromisedFor { get; init; }
        public string MainsName { get; init; } = "";
        public decimal MainsGaugeMm { get; init; }
        public string CrossesName { get; init; } = "";
        public decimal CrossesGaugeMm { get; init; }
        public decimal MainsTension { get; init; }
        public decimal CrossesTension { get; init; }
        public TensionUnit TensionUnit { get; init; }

        /// <summary>In the client's own words; the bench's note is the shop's alone.</summary>
        public string Wish { get; init; } = "";

        /// <summary>Of a visit, which has no strings: names with blanks.</summary>
        public string? Work { get; init; }

        public IReadOnlyList<VisitWork> Works => VisitWorks.Of(Work);
    }

    /// <summary>The job a label is about, or the newest that is strung.</summary>
    public sealed record JobPart
    {
        public long Id { get; init; }
        public long Ticket { get; init; }
        public DateOnly StrungOn { get; init; }
        /// <summary>
        /// The restring-by date as it was right after stringing, so that a label says the same however often it is printed; today's
        /// where nobody knows that of the strings that are in.
        /// </summary>
        public DateOnly? LabelDate { get; init; }

        public string MainsName { get; init; } = "";
        public decimal MainsGaugeMm { get; init; }
        public string CrossesName { get; init; } = "";
        public decimal CrossesGaugeMm { get; init; }
        public decimal MainsTension { get; init; }
        public decimal CrossesTension { get; init; }
        public TensionUnit TensionUnit { get; init; }
        public decimal? Reading { get; init; }
        public string? Instrument { get; init; }
    }
}
