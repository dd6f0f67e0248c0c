namespace TagPage.Records.Accounts;

/// <summary>Somebody who may sign in to the shop area.</summary>
public sealed class Account
{
    public string Id { get; init; } = Guid.NewGuid().ToString("N");
    public string Name { get; set; } = "";
    public string NormalizedName { get; set; } = "";
    public string PasswordHash { get; set; } = "";

    /// <summary>A new one with each change of the password, which ends the sessions begun before.</summary>
    public string SecurityStamp { get; set; } = "";

    /// <summary>A new one with each save, so that the second of two simultaneous saves is told.</summary>
    public string ConcurrencyStamp { get; set; } = Guid.NewGuid().ToString("N");

    /// <summary>One of <see cref="Roles"/>.</summary>
    public string Role { get; init; } = Roles.Owner;

    /// <summary>Where a helper is told of a new browser; null for nowhere, and for the owner.</summary>
    public string? Mail { get; init; }

    /// <summary>The last time; null for never.</summary>
    public DateTimeOffset? SignedInAt { get; init; }

    /// <summary>The password alone does not sign in.</summary>
    public bool TwoFactor { get; set; }

    /// <summary>What the authenticator app knows, under a key that is not in the database; empty without one.</summary>
    public string AuthenticatorKey { get; set; } = "";

    /// <summary>Hashes of the recovery codes that are left, with blanks between.</summary>
    public string RecoveryHashes { get; set; } = "";
}
