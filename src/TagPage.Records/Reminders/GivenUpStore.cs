using Dapper;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

/// <summary>Emails that were given up after they were tried, and that somebody still waits for.</summary>
public sealed class GivenUpStore(Database database, ShopClock clock)
{
    public sealed record Counts
    {
        public int All { get; init; }
        public int FromFinders { get; init; }
    }

    public Counts Count() => database.Read(c => c.QuerySingle<Counts>(CountSql));

    private const string CountSql = $"SELECT COUNT(*) AS \"all\", COUNT(*) FILTER (WHERE kind IN ('FoundNotice', 'FinderAnswer')) AS from_finders FROM outbox WHERE {Counted}";

    /// <summary>Sends all of them again, to the addresses on file now.</summary>
    public Outcome RetryAll(Who who) => database.WriteAsOwner(who, c => new Outcome.Done(c.Execute(RetrySql, new { clock.Now })));

    private const string RetrySql = $"UPDATE outbox SET {SendReminderStore.Anew} WHERE {Counted}";

    /// <summary>The owner has seen to them otherwise; each can still be tried again by itself.</summary>
    public Outcome LetAllGo(Who who) => database.WriteAsOwner(who, c => new Outcome.Done(c.Execute(LetGoSql)));

    private const string LetGoSql = $"UPDATE outbox SET let_go = 1 WHERE {Counted}";

    // A code is asked for anew, and a reminder that was taken back, replaced, answered or is not wanted any more is nobody's loss.
    private const string Counted = $"state = 'Failed' AND let_go = 0 AND tries > 0 AND kind <> 'OwnPageCode' AND {SendReminderStore.StillHolds}";
}
