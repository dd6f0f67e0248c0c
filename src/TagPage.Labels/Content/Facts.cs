namespace TagPage.Labels.Content;

/// <summary>Of a job that is done, ready to print.</summary>
public sealed record DoneFacts
{
    public string Tension { get; init; } = "";
    public string Strings { get; init; } = "";
    public string RestringBy { get; init; } = "";
    public string Strung { get; init; } = "";
    public string Reading { get; init; } = "";
    public string OwnLine { get; init; } = "";
    public string Whose { get; init; } = "";
}

/// <summary>Of a measured racket, ready to print.</summary>
public sealed record MeasureFacts
{
    public string Racket { get; init; } = "";
    public string Weight { get; init; } = "";
    public string Balance { get; init; } = "";
    public string SwingWeight { get; init; } = "";
    public string Stiffness { get; init; } = "";
    public string Measured { get; init; } = "";
    public string OwnLine { get; init; } = "";
    public string Whose { get; init; } = "";
}

/// <summary>Of a racket at an event's desk, ready to print.</summary>
public sealed record DeskFacts
{
    public string Number { get; init; } = "";
    public string Tension { get; init; } = "";
    public string Strings { get; init; } = "";
    public string When { get; init; } = "";
    public string Name { get; init; } = "";
}
