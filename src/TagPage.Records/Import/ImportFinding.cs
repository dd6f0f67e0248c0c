namespace TagPage.Records.Import;

/// <summary>What a batch means for the shop as it is.</summary>
/// <param name="Matches">Clients who may be on file, or twice in the files.</param>
/// <param name="Undecided">Those of them of whom it is not decided who they are: nothing is saved, and what is on file is not looked for.</param>
/// <param name="Clashes">What the shop has differently: nothing is saved.</param>
public sealed record ImportFinding(IReadOnlyList<ImportMatch> Matches, IReadOnlyList<ImportMatch> Undecided, IReadOnlyList<ImportClash> Clashes)
{
    public static ImportFinding None { get; } = new([], [], []);

    public bool CanBeSaved => Undecided.Count == 0 && Clashes.Count == 0;
}
