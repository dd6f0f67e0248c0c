namespace TagPage.Records.Accounts;

/// <summary>A browser that is signed in.</summary>
public sealed record SessionRow
{
    public string Id { get; init; } = "";
    public SignInWay Way { get; init; }

    /// <summary>What the browser calls itself; anybody can write anything there.</summary>
    public string Browser { get; init; } = "";

    public DateTimeOffset MadeAt { get; init; }
}

/// <summary>By what somebody signed in. Link: with a one-time link. Pin: on a shared tablet, to the bench alone.</summary>
public enum SignInWay { Password, AppCode, RecoveryCode, Passkey, Link, Pin }
