namespace TagPage.Labels.Content;

/// <summary>Of a job that is done, ready to print.</summary>
public sealed record DoneFacts
{
    /// <summary>Without its unit.</summary>
    public string Tension { get; init; } = "";
    public string Unit { get; init; } = "";
    public StringFact Mains { get; init; } = new("", "");

    /// <summary>Empty where they are as the mains.</summary>
    public StringFact Crosses { get; init; } = new("", "");
    public string RestringBy { get; init; } = "";
    public string Strung { get; init; } = "";
    public string Reading { get; init; } = "";
    public string Instrument { get; init; } = "";
    public string OwnLine { get; init; } = "";
    public string Whose { get; init; } = "";

    /// <summary>Whether the label begins with whose it is.</summary>
    public bool NameLeads { get; init; }
}

/// <summary>A string's name, which may be cut, and its gauge, which may not.</summary>
public sealed record StringFact(string Name, string Gauge)
{
    public string Text => Gauge.Length == 0 ? Name : $"{Name} {Gauge}";
}

/// <summary>Of a measured racket, ready to print, values with their units.</summary>
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

/// <summary>Of a ticket that waits, ready to print.</summary>
public sealed record WaitingFacts
{
    public string Ticket { get; init; } = "";

    /// <summary>The day it is promised for.</summary>
    public string Promised { get; init; } = "";

    /// <summary>What is to be done where the strings stay in; there is no tension then, and there are no strings.</summary>
    public string Work { get; init; } = "";

    /// <summary>With its unit.</summary>
    public string Tension { get; init; } = "";
    public StringFact Mains { get; init; } = new("", "");

    /// <summary>Empty where they are as the mains.</summary>
    public StringFact Crosses { get; init; } = new("", "");

    /// <summary>In the client's words.</summary>
    public string Wish { get; init; } = "";
    public string Whose { get; init; } = "";
}
