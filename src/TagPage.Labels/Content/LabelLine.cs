namespace TagPage.Labels.Content;

/// <summary>One line of a label.</summary>
/// <param name="Name">What a warning calls it, such as "the date strung".</param>
/// <param name="Text">What it says.</param>
public sealed record LabelLine(string Name, string Text)
{
    /// <summary>Its size against plain lines, 1 or more.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>What it may say instead if room is short, the longest first.</summary>
    public IReadOnlyList<string> Shorter { get; init; } = [];

    /// <summary>What it says on a label whose square cannot be printed, if that is something else.</summary>
    public string? WithoutSquare { get; init; }

    /// <summary>Whether it may be cut with an ellipsis: names may, numbers and dates may not.</summary>
    public bool MayBeCut { get; init; }
}
