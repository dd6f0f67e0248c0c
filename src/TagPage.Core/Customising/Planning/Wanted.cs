namespace TagPage.Core.Customising.Planning;

/// <summary>What rackets should measure. Of one racket a missing figure may be anything; those of a set become the same.</summary>
public sealed record Wanted
{
    public double? MassG { get; init; }
    public double? BalanceCm { get; init; }
    public double? SwingWeight { get; init; }

    public static Wanted Of(Body body) => new() { MassG = body.MassG, BalanceCm = body.BalanceCm, SwingWeight = body.SwingWeight };
}
