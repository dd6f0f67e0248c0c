namespace TagPage.Records.Accounts;

/// <summary>A passkey as Web Authentication describes it; the private half never leaves the device.</summary>
public sealed record PasskeyRow
{
    public byte[] Id { get; init; } = [];

    /// <summary>What the owner calls it.</summary>
    public string Name { get; init; } = "";

    public byte[] PublicKey { get; init; } = [];
    public long SignCount { get; init; }

    /// <summary>How browsers reach it, with blanks between.</summary>
    public string Transports { get; init; } = "";

    public bool UserVerified { get; init; }
    public bool BackupEligible { get; init; }
    public bool BackedUp { get; init; }
    public byte[] Attestation { get; init; } = [];
    public byte[] ClientData { get; init; } = [];
    public DateTimeOffset MadeAt { get; init; }
}
