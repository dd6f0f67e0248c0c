using Dapper;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>Gives a player a client record of their own. Rackets and history move along; what the guardian agreed to does not.</summary>
public sealed class OwnClientStore(Database database, OwnPageLinkStore links, ShopClock clock)
{
    public enum Answer { Done, NotFresh, Absent }

    public Answer Make(long client, string session, long player, string mail, string? phone)
    {
        var now = clock.Now;
        return database.Write(c =>
        {
            if (!OwnPageCodeStore.IsFresh(c, session, now))
                return Answer.NotFresh;
            if (c.ExecuteScalar<long?>(NewSql, new { client, player, mail, phone }) is not { } own)
                return Answer.Absent;
            c.Execute("UPDATE player SET client_id = @own, junior = 0, version = version + 1 WHERE id = @player", new { own, player });
            ClientRequestStore.Add(c, own, RequestKind.OwnClient, "", now);
            links.MakeAndMail(c, own);
            return Answer.Done;
        });
    }

    private const string NewSql = """
        INSERT INTO client (name, phone, mail, language)
        SELECT p.name, @phone, @mail, c.language
        FROM player p
        JOIN client c ON c.id = p.client_id
        WHERE p.id = @player AND c.id = @client
        RETURNING id
        """;
}
