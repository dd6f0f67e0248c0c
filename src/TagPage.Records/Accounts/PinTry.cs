namespace TagPage.Records.Accounts;

/// <summary>Whether a PIN may be tried now.</summary>
public sealed record PinTry
{
    /// <summary>The PIN's hash; null where it may not be tried.</summary>
    public string? Hash { get; init; }

    /// <summary>How long to wait for the next try.</summary>
    public TimeSpan Wait { get; init; }

    /// <summary>Too many were wrong: only a full sign-in on this tablet helps.</summary>
    public bool IsLocked { get; init; }

    /// <summary>Right or wrong, it signs in only once the helper has set up what the owner wants beside a password.</summary>
    public bool OwesSecondStep { get; init; }
}
