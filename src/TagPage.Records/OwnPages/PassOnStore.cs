using Dapper;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tags;

namespace TagPage.Records.OwnPages;

/// <summary>A racket leaves its household.</summary>
public sealed class PassOnStore(Database database, ShopClock clock)
{
    public enum Answer { Done, NotFresh, Absent, AtShop }

    public Answer PassOn(long client, string session, long racket)
    {
        var now = clock.Now;
        return database.Write(c =>
        {
            if (!OwnPageCodeStore.IsFresh(c, session, now))
                return Answer.NotFresh;
            if (OwnPageRacketStore.Get(c, client, racket) is not { IsMine: true } row)
                return Answer.Absent;
            if (row.JobId is not null)
                return Answer.AtShop;
            c.Execute(SellSql, new { racket });
            TagStore.RetireOf(c, racket, now);
            ClientRequestStore.Add(c, client, RequestKind.PassedOn, $"racket {row.Number}", now);
            return Answer.Done;
        });
    }

    private const string SellSql = "UPDATE racket SET state = 'Sold', lost_since = NULL, lost_note = '', version = version + 1 WHERE id = @racket";
}
