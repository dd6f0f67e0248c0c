using TagPage.Records.Money;

namespace TagPage.Records.Jobs;

/// <summary>Rackets that are handed out together, as entered.</summary>
public sealed record PickUpEntry
{
    public string FormKey { get; init; } = "";
    public DateOnly CollectedOn { get; init; }

    /// <summary>Their jobs.</summary>
    public IReadOnlyList<long> Jobs { get; init; } = [];

    /// <summary>One payment for all of them; null for nothing yet.</summary>
    public PaymentEntry? Payment { get; init; }

    /// <summary>Where the form has a job.</summary>
    public static string Place(long job) => FormattableString.Invariant($"{nameof(Jobs)}[{job}]");
}
