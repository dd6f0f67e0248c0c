namespace TagPage.Records.Storage;

/// <summary>
/// Who acts. A write takes it and passes <see cref="IsShop"/> and <see cref="ClientId"/> on to SQL, where one of the
/// conditions below stands in the WHERE clause. Finders and the program itself are neither, so that they fit none.
/// </summary>
public sealed record Who
{
    private Who()
    {
    }

    public static Who Shop { get; } = new() { IsShop = true };

    public static Who Finder { get; } = new();

    public static Who Program { get; } = new();

    public static Who Client(long id) => new() { ClientId = id };

    public bool IsShop { get; private init; }

    /// <summary>Null for everybody but a client; in SQL it then equals no client.</summary>
    public long? ClientId { get; private init; }

    /// <summary>Whose racket r is to be changed. A sold racket is no longer the client's, though it stays on file under them.</summary>
    internal const string ChangesRacket = """
        (@IsShop OR (r.state <> 'Sold' AND r.player_id IN (SELECT id FROM player WHERE client_id = @ClientId)))
        """;

    /// <summary>Whose player p is to be changed.</summary>
    internal const string ChangesPlayer = "(@IsShop OR p.client_id = @ClientId)";
}
