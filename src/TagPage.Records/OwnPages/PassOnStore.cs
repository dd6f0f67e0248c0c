using Dapper;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tags;

namespace TagPage.Records.OwnPages;

/// <summary>A racket leaves its household.</summary>
public sealed class PassOnStore(Database database, ShopClock clock)
{
    /// <summary>The household's to say, with a code; the shop hands rackets over to somebody by name.</summary>
    public Outcome PassOn(Who who, long racket)
    {
        var now = clock.Now;
        return database.Write<Outcome>(c =>
        {
            if (who.ClientId is not { } client || OwnPageRacketStore.Get(c, client, racket) is not { IsMine: true } row)
                return new Outcome.Absent();
            if (!OwnPageCodeStore.IsFresh(c, who, now))
                return new Outcome.Refused(new CodeRanOut());
            if (row.JobId is not null)
                return new Outcome.Refused(new TicketOpen());
            c.Execute(SellSql, new { racket });
            TagStore.RetireOf(c, racket, now);
            ClientRequestStore.Add(c, client, RequestKind.PassedOn, $"racket {row.Number}", now);
            return new Outcome.Done(racket);
        });
    }

    private const string SellSql = "UPDATE racket SET state = 'Sold', lost_since = NULL, lost_note = '', version = version + 1 WHERE id = @racket";
}
