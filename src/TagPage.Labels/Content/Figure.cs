namespace TagPage.Labels.Content;

/// <summary>What is seen first: a number, a date or a name, set large.</summary>
/// <param name="Name">What a warning calls it, such as "the tension".</param>
/// <param name="Value">What is set large.</param>
public sealed record Figure(string Name, string Value)
{
    /// <summary>0 is the most important of all figures and lines.</summary>
    public int Rank { get; init; }

    /// <summary>Small words that lead to it.</summary>
    public string Caption { get; init; } = "";

    /// <summary>What it is counted in, small behind it.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Whether it takes the whole height of the tape.</summary>
    public bool IsTall { get; init; }

    /// <summary>Whether it gives way to another figure as high as the tape: smaller beside it, or under it.</summary>
    public bool IsSecond { get; init; }

    /// <summary>Whether it may be cut with an ellipsis.</summary>
    public bool MayBeCut { get; init; }

    /// <summary>All of it in the order it is read.</summary>
    public string Text => string.Join(' ', new[] { Caption, Value, Unit }.Where(part => part.Length > 0));
}
