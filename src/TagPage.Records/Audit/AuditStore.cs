using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Accounts;
using TagPage.Records.Storage;

namespace TagPage.Records.Audit;

/// <summary>What was done, for the owner to look up. Of the same kind and detail there is one line an hour, so that nobody fills it.</summary>
public sealed class AuditStore(Database database, TimeProvider clock)
{
    public const int OnAPage = 100;

    private const int LongestDetail = 100;

    private static readonly TimeSpan Kept = TimeSpan.FromDays(366), Together = TimeSpan.FromHours(1);

    /// <param name="what">What happened.</param>
    /// <param name="detail">In a few words.</param>
    /// <param name="account">The id of who was signed in; empty for nobody.</param>
    public void Add(AuditEvent what, string detail = "", string account = "") => database.Write(c => Note(c, what, detail, clock.GetUtcNow(), account));

    /// <summary>In the transaction of what is noted.</summary>
    internal static void Note(SqliteConnection connection, AuditEvent what, string detail, DateTimeOffset now, string account = "")
    {
        connection.Execute(ForgetSql, new { Oldest = now - Kept });
        var line = new { Event = (int)what, Detail = detail.Length <= LongestDetail ? detail : detail[..LongestDetail], account, now, Since = now - Together };
        if (connection.Execute(AgainSql, line) == 0)
            connection.Execute(AddSql, line);
    }

    private const string ForgetSql = "DELETE FROM audit WHERE first_at < @Oldest";

    private const string AgainSql = """
        UPDATE audit SET times = times + 1, last_at = @now
        WHERE id = (SELECT MAX(id) FROM audit WHERE event = @Event AND detail = @Detail AND made_by = @account) AND first_at > @Since AND last_at <= @now
        """;

    private const string AddSql = "INSERT INTO audit (event, detail, made_by, first_at, last_at) VALUES (@Event, @Detail, @account, @now, @now)";

    /// <summary>The newest lines before one, and one more than a page has where there are more.</summary>
    public IReadOnlyList<AuditRow> Page(Who who, long before) =>
        database.Read(c => c.Query<AuditRow>(PageSql, new { who.IsOwner, before, Most = OnAPage + 1 }).AsList());

    private const string PageSql = $"""
        SELECT u.id, u.event, u.detail, u.times, u.first_at, u.last_at, a.name AS by
        FROM audit u
        LEFT JOIN account a ON a.id = u.made_by AND {AccountStore.Several}
        WHERE @IsOwner AND u.id < @before
        ORDER BY u.id DESC
        LIMIT @Most
        """;
}
