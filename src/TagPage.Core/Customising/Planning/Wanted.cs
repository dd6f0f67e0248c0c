namespace TagPage.Core.Customising.Planning;

/// <summary>What rackets should measure. Of one racket a missing figure may be anything; those of a set become the same.</summary>
public sealed record Wanted
{
    public double? MassG { get; init; }
    public double? BalanceCm { get; init; }
    public double? SwingWeight { get; init; }

    public static Wanted Of(Body body) => new() { MassG = body.MassG, BalanceCm = body.BalanceCm, SwingWeight = body.SwingWeight };

    /// <summary>With the figures of a body for those that may be anything.</summary>
    public Wanted Or(Body body) => new() { MassG = MassG ?? body.MassG, BalanceCm = BalanceCm ?? body.BalanceCm, SwingWeight = SwingWeight ?? body.SwingWeight };
}
