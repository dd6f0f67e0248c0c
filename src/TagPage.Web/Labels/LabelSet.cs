using TagPage.Labels.Layout;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Labels;

namespace TagPage.Web.Labels;

/// <summary>Several labels printed in one go, each on its racket's own tape.</summary>
public sealed record LabelSet
{
    /// <param name="Row">Whose it is.</param>
    /// <param name="Purpose">What it is for.</param>
    public sealed record Wanted(LabelRow Row, LabelPurpose Purpose)
    {
        /// <summary>Where it is printed alone.</summary>
        public string Page => FormattableString.Invariant($"/shop/labels/racket/{Row.RacketId}?purpose={Purpose}{JobQuery}");

        private string JobQuery => (Purpose, Row.Job, Row.Waiting) switch
        {
            (LabelPurpose.Done, { } job, _) => FormattableString.Invariant($"&job={job.Id}"),
            (LabelPurpose.Waiting, _, { } waiting) => FormattableString.Invariant($"&job={waiting.Id}"),
            _ => "",
        };
    }

    public IReadOnlyList<(Wanted Wanted, LaidLabel Label)> Labels { get; private init; } = [];

    /// <summary>What cannot be printed the way it is kept with its racket, and why.</summary>
    public IReadOnlyList<(Wanted Wanted, string Why)> Unprinted { get; private init; } = [];

    public bool IsEmpty => Labels.Count + Unprinted.Count == 0;

    public static LabelSet Of(LabelMaker maker, IEnumerable<Wanted> wanted, LabelPages pages)
    {
        var made = wanted.Select(one => (Wanted: one, Made: maker.Make(one.Row, EntryOf(one, pages)))).ToList();
        return new LabelSet
        {
            Labels = [.. made.Where(one => one.Made.Label is not null).Select(one => (one.Wanted, one.Made.Label!))],
            Unprinted = [.. made.Where(one => one.Made.Label is null).Select(one => (one.Wanted, one.Made.Why!))],
        };
    }

    public byte[] Pdf(LabelMaker maker, LabelPages pages) => LabelPdf.Of(maker.Pages(Labels.Select(pair => pair.Label), pages));

    private static LabelEntry EntryOf(Wanted wanted, LabelPages pages) => new()
    {
        Purpose = wanted.Purpose,
        TapeColour = wanted.Row.LabelTape,
        InkColour = wanted.Row.LabelInk,
        OwnLine = wanted.Row.LabelLine,
        AgreedName = wanted.Row.LabelName,
        Pages = pages,
    };
}
