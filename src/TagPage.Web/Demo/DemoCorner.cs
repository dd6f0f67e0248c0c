using Dapper;
using TagPage.Web.Data;
using TagPage.Web.Pages.My;

namespace TagPage.Web.Demo;

/// <summary>A client's own page that can be tried: that of the household with most rackets.</summary>
public sealed class DemoCorner(Database database, CornerLinkStore links, CornerTexts texts)
{
    /// <summary>Path of its private link, the newest that works or a new one; null without any client.</summary>
    public string? Path() => Client() is { } client && Link(client) is { } link ? new Uri(texts.Link(link)).AbsolutePath : null;

    private CornerLinkStore.Row? Link(long client) =>
        links.OfClient(client).FirstOrDefault(links.IsLive) ?? (links.Make(client) is { } made ? links.Get(made) : null);

    private long? Client() => database.Read(c => c.QueryFirstOrDefault<long?>(ClientSql));

    private const string ClientSql = """
        SELECT p.client_id
        FROM player p
        JOIN racket r ON r.player_id = p.id
        GROUP BY p.client_id
        ORDER BY COUNT(DISTINCT p.id) DESC, COUNT(*) DESC, p.client_id
        LIMIT 1
        """;
}
