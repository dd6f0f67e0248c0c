namespace TagPage.Records.Storage;

/// <summary>
/// Who acts. A write takes it and passes <see cref="IsShop"/> or <see cref="IsOwner"/> and <see cref="ClientId"/> on to SQL, where one of
/// the conditions below stands in the WHERE clause. Finders and the program itself are neither, so that they fit none.
/// </summary>
public sealed record Who
{
    private Who()
    {
    }

    /// <summary>The owner, by no account: what the program does in the owner's name.</summary>
    public static Who Shop { get; } = new() { IsShop = true, IsOwner = true };

    /// <param name="account">The id of the account that signed in, where there is one.</param>
    public static Who Owner(string? account) => new() { IsShop = true, IsOwner = true, Account = account };

    /// <summary>Somebody who helps in the shop: does what is done at the bench, and nothing that is the owner's alone.</summary>
    /// <param name="account">The id of the account that signed in, where there is one.</param>
    public static Who Bench(string? account) => new() { IsShop = true, Account = account };

    public static Who Finder { get; } = new();

    public static Who Program { get; } = new();

    /// <param name="id">Of the client.</param>
    /// <param name="session">The browser; what could hurt takes a code that was typed in it a moment ago.</param>
    public static Who Client(long id, string? session = null) => new() { ClientId = id, Session = session };

    /// <summary>At the desk of one event, for as long as it is open.</summary>
    public static Who Helper(long eventId) => new() { EventId = eventId };

    /// <summary>The owner, or somebody who helps at the bench.</summary>
    public bool IsShop { get; private init; }

    public bool IsOwner { get; private init; }

    /// <summary>By which account of the shop; null for everybody else.</summary>
    public string? Account { get; private init; }

    /// <summary>Null for everybody but a client; in SQL it then equals no client.</summary>
    public long? ClientId { get; private init; }

    public string? Session { get; private init; }

    /// <summary>Null for everybody but an event's helper; in SQL it then equals no event.</summary>
    public long? EventId { get; private init; }

    /// <summary>How it stands in records that keep who did something.</summary>
    internal string Name => Account ?? (IsShop ? "Shop" : ClientId is not null ? "Client" : EventId is not null ? "Event" : "Program");

    /// <summary>Whose racket r is to be changed. What a client sold is theirs no more, though it stays on file under them.</summary>
    internal const string ChangesRacket = """
        (@IsShop OR (r.state <> 'Sold' AND r.player_id IN (SELECT id FROM player WHERE client_id = @ClientId)))
        """;

    /// <summary>Whose player p is to be changed.</summary>
    internal const string ChangesPlayer = "(@IsShop OR p.client_id = @ClientId)";

    /// <summary>Whose record as a client is to be changed.</summary>
    internal const string ChangesClient = "(@IsShop OR client.id = @ClientId)";

    /// <summary>Who decides for a client about links, reminders and deletion.</summary>
    internal const string DecidesForClient = "(@IsOwner OR client.id = @ClientId)";

    /// <summary>Who works at the desk of event v.</summary>
    internal const string WorksAtDesk = "(@IsShop OR (v.id = @EventId AND v.closed_at IS NULL))";
}
