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

/// <summary>By what somebody signed in. Link: with the one-time link of the command line.</summary>
public enum SignInWay { Password, AppCode, RecoveryCode, Passkey, Link }
