using Dapper;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>Gives a player a client record of their own. Rackets and history move along; what the guardian agreed to does not.</summary>
public sealed class OwnClientStore(Database database, OwnPageLinkStore links, ShopClock clock)
{
    /// <summary>The guardian's to do, with a code. Done tells the new client.</summary>
    public Outcome Make(Who who, long player, string mail, string? phone)
    {
        var now = clock.Now;
        return database.Write<Outcome>(c =>
        {
            if (!c.ExecuteScalar<bool>(MaySql, new { who.ClientId, player }))
                return new Outcome.Absent();
            if (!OwnPageCodeStore.IsFresh(c, who, now))
                return new Outcome.Refused(new CodeRanOut());
            var own = c.ExecuteScalar<long>(NewSql, new { player, mail, phone });
            c.Execute("UPDATE player SET client_id = @own, junior = 0, version = version + 1 WHERE id = @player", new { own, player });
            ClientRequestStore.Add(c, own, RequestKind.OwnClient, "", now);
            links.MakeAndMail(c, own);
            return new Outcome.Done(own);
        });
    }

    private const string MaySql = "SELECT EXISTS (SELECT 1 FROM player WHERE id = @player AND client_id = @ClientId)";

    private const string NewSql = """
        INSERT INTO client (name, phone, mail, language)
        SELECT p.name, @phone, @mail, c.language
        FROM player p
        JOIN client c ON c.id = p.client_id
        WHERE p.id = @player
        RETURNING id
        """;
}
