namespace TagPage.Core.EventDesk;

/// <summary>What a change does to a racket's promise.</summary>
/// <param name="Number">Desk number.</param>
/// <param name="Due">What was promised.</param>
/// <param name="Before">When it would have been ready; null for not at all.</param>
/// <param name="After">When it will be ready now; null for not at all.</param>
public sealed record Slip(int Number, DateTime Due, DateTime? Before, DateTime? After)
{
    /// <summary>Late where it was on time, or later than it was.</summary>
    public bool Suffers => Late(After) > Late(Before);

    private TimeSpan Late(DateTime? ready) =>
        ready is null ? TimeSpan.MaxValue : ready > Due ? ready.Value - Due : TimeSpan.Zero;
}
