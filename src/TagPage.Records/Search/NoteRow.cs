namespace TagPage.Records.Search;

/// <summary>A note that fits, and whose it is: a ticket’s, a racket’s, a player’s or the client’s.</summary>
public sealed record NoteRow
{
    /// <summary>The note around what was looked for, as typed.</summary>
    public string Excerpt { get; init; } = "";
    public long ClientId { get; init; }
    public string Client { get; init; } = "";
    public string? Player { get; init; }
    public long? RacketId { get; init; }
    public int? Number { get; init; }
    public long? JobId { get; init; }
    public long? Ticket { get; init; }
}
