using Dapper;
using TagPage.Web.Data;
using TagPage.Web.Pages.Shop.Corner;
using TagPage.Web.Pages.Shop.Tags;

namespace TagPage.Web.Pages.My;

/// <summary>A racket leaves its household.</summary>
public sealed class PassOnStore(Database database, ShopClock clock)
{
    public enum Answer { Done, NotFresh, Absent, AtShop }

    public Answer PassOn(long client, string session, long racket)
    {
        var now = clock.Now;
        return database.Write(c =>
        {
            if (!CornerCodeStore.IsFresh(c, session, now))
                return Answer.NotFresh;
            if (MyRacketStore.Get(c, client, racket) is not { IsMine: true } row)
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
