namespace TagPage.Records.Accounts;

/// <summary>What somebody may do who signs in to the shop area.</summary>
public static class Roles
{
    /// <summary>Everything.</summary>
    public const string Owner = "Owner";

    /// <summary>What is done at the bench; no totals, no export, no settings.</summary>
    public const string Bench = "Bench";
}
