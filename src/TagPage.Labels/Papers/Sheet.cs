namespace TagPage.Labels.Papers;

/// <summary>What a bill or a receipt says, in words that are ready to print.</summary>
public sealed record Sheet
{
    /// <summary>ISO 639-1: what it is written in.</summary>
    public string Language { get; init; } = "en";

    public string Title { get; init; } = "";

    /// <summary>Whose paper it is, a line each; the first stands out.</summary>
    public IReadOnlyList<string> From { get; init; } = [];

    public IReadOnlyList<string> To { get; init; } = [];

    /// <summary>Number, date and the like.</summary>
    public IReadOnlyList<(string Name, string Value)> Facts { get; init; } = [];

    public IReadOnlyList<SheetRow> Rows { get; init; } = [];

    /// <summary>Under the rows; the last one stands out.</summary>
    public IReadOnlyList<(string Name, string Value)> Sums { get; init; } = [];

    /// <summary>At the end, a paragraph each.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>The square to pay with, and what stands beside it; null without one.</summary>
    public TransferQr? Square { get; init; }
    public IReadOnlyList<string> SquareWords { get; init; } = [];

    /// <summary>"Page 1 of 2".</summary>
    public Func<int, int, string> PageOf { get; init; } = (page, of) => $"{page} / {of}";
}

/// <param name="Text">What it is.</param>
/// <param name="Amount">Beside it on the right; empty for a heading.</param>
public sealed record SheetRow(string Text, string Amount)
{
    /// <summary>Of the rows below it.</summary>
    public bool IsHeading { get; init; }
}
