using Dapper;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>
/// Deletes finders' data for good: their words, how to reach them, the mark of their source, and the emails that carried
/// them. The log still shows that something happened.
/// </summary>
public sealed class FoundWipeStore(Database database, MailFiles files)
{
    /// <summary>How long what finders left is kept.</summary>
    public static readonly TimeSpan Kept = TimeSpan.FromDays(30);

    public void Wipe(DateTimeOffset before, DateTimeOffset now)
    {
        files.Prune(before);
        var wiped = database.Write(c =>
        {
            var mails = c.Query<long>(MailsSql, new { before }).AsList();
            c.Execute(LetGoSql, new { mails });
            c.Execute(DeleteMailsSql, new { mails });
            return c.Execute(WipeSql, new { before, now });
        });
        if (wiped > 0)
            database.EmptyLog();
    }

    private const string MailsSql = """
        SELECT notice_id FROM found_event WHERE at < @before AND wiped_at IS NULL AND notice_id IS NOT NULL
        UNION
        SELECT o.id FROM outbox o JOIN found_event e ON e.id = o.event_id WHERE e.at < @before AND e.wiped_at IS NULL
        """;

    private const string LetGoSql = "UPDATE found_event SET notice_id = NULL WHERE notice_id IN @mails";

    private const string DeleteMailsSql = "DELETE FROM outbox WHERE id IN @mails";

    private const string WipeSql = """
        UPDATE found_event
        SET message = '', contact = '', source = '', form_key = 'wiped-' || id, wiped_at = @now
        WHERE at < @before AND wiped_at IS NULL
        """;
}
