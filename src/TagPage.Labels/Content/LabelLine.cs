namespace TagPage.Labels.Content;

/// <summary>One line of a label.</summary>
/// <param name="Name">What a warning calls it, such as "the date strung".</param>
/// <param name="Text">What it says; nothing is printed where it is empty.</param>
public sealed record LabelLine(string Name, string Text)
{
    // Every way to break a line is tried.
    private const int MostParts = 8;

    /// <summary>0 is the most important of all figures and lines; the last one is given up first.</summary>
    public int Rank { get; init; }

    /// <summary>Plain words before a bold text.</summary>
    public string Caption { get; init; } = "";

    public bool IsBold { get; init; }

    /// <summary>What it may say instead if room is short, the longest first.</summary>
    public IReadOnlyList<string> Shorter { get; init; } = [];

    /// <summary>What it says on a label whose square cannot be printed, if that is something else.</summary>
    public string? WithoutSquare { get; init; }

    /// <summary>Whether it may be cut with an ellipsis: names may, numbers and dates may not.</summary>
    public bool MayBeCut { get; init; }

    /// <summary>The end that a cut leaves whole, such as a gauge.</summary>
    public string KeptEnd { get; init; } = "";

    /// <summary>Where it may go on on a next row: after each part but the last. Empty for a line that stays in one row.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>Whether it is a figure that had no room to be set large.</summary>
    internal bool WasFigure { get; init; }

    /// <summary>Whether tape too narrow for more than the essentials goes without it.</summary>
    public bool IsExtra { get; init; }

    /// <summary>Whether it stands at the end, and is still not given up before what is less important.</summary>
    public bool Ends { get; init; }

    /// <summary>Whether it stands with its own panel as long as there is room.</summary>
    public bool Stays { get; init; }

    /// <summary>Whether it may stand behind a line of a list that lets others follow, where that saves a row.</summary>
    public bool MayStandBehind { get; init; }

    /// <summary>Whether in a list another line may stand behind it: a name behind the racket’s number or the day, not behind what was measured.</summary>
    public bool IsFollowed { get; init; }

    /// <summary>Whether the next line goes on with its sentence, and nothing else may follow it in its row.</summary>
    public bool GoesOn { get; init; }

    /// <summary>Whether it goes on with the sentence of the line before.</summary>
    public bool Follows { get; init; }

    /// <summary>Parts of words that may be set in any number of rows: one word each, or several of a long text.</summary>
    public static IReadOnlyList<string> Words(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var each = (words.Length + MostParts - 1) / MostParts;
        var parts = words.Chunk(Math.Max(1, each)).Select(chunk => string.Join(' ', chunk)).ToList();
        return [.. parts.Select((part, i) => i < parts.Count - 1 ? part + " " : part)];
    }
}
