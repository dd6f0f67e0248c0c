namespace TagPage.Web.Words;

/// <summary>The trade's names.</summary>
public sealed record TradePhrases
{
    public required string Racket { get; init; }
    public required string RacketInText { get; init; }
    public required string RacketOf { get; init; }
    public required string Visits { get; init; }
    public required string WorkGrip { get; init; }
    public required string WorkGrommets { get; init; }
    public required string WorkBumper { get; init; }
    public required string WorkBalance { get; init; }
    public required string WorkCheck { get; init; }
    public required string WorkMeasuring { get; init; }
    public required string WorkOther { get; init; }
    public required string Tennis { get; init; }
    public required string Badminton { get; init; }
    public required string Squash { get; init; }
    public required string NaturalGut { get; init; }
    public required string Multifilament { get; init; }
    public required string SyntheticGut { get; init; }
    public required string Polyester { get; init; }
    public required string Aramid { get; init; }
    public required string White { get; init; }
    public required string Yellow { get; init; }
    public required string Orange { get; init; }
    public required string Red { get; init; }
    public required string Pink { get; init; }
    public required string Purple { get; init; }
    public required string Blue { get; init; }
    public required string Green { get; init; }
    public required string Silver { get; init; }
    public required string Black { get; init; }
}
