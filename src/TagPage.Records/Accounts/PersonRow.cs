namespace TagPage.Records.Accounts;

/// <summary>Somebody who signs in to the shop area, or did.</summary>
public sealed record PersonRow
{
    public string Id { get; init; } = "";
    public string Name { get; init; } = "";

    /// <summary>One of <see cref="Roles"/>.</summary>
    public string Role { get; init; } = "";

    public string? Mail { get; init; }
    public DateTimeOffset? SignedInAt { get; init; }

    /// <summary>Since when they can no longer sign in.</summary>
    public DateTimeOffset? EndedAt { get; init; }

    public bool TwoFactor { get; init; }
    public int Passkeys { get; init; }

    /// <summary>Browsers that are signed in.</summary>
    public int Sessions { get; init; }

    /// <summary>Until when their link to choose a password works; null where there is none.</summary>
    public DateTimeOffset? InvitedUntil { get; init; }
}
