namespace TagPage.Records.Audit;

public sealed record AuditRow
{
    public long Id { get; init; }
    public AuditEvent Event { get; init; }
    public string Detail { get; init; } = "";

    /// <summary>Who of the shop; null where one person alone signs in, or nobody was signed in.</summary>
    public string? By { get; init; }

    /// <summary>How often within the hour that begins with the first.</summary>
    public long Times { get; init; }

    public DateTimeOffset FirstAt { get; init; }
    public DateTimeOffset LastAt { get; init; }
}
