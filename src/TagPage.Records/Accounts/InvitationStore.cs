using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>The one-time link with which a helper chooses a password, for the first time or after forgetting it. A newer one voids the older.</summary>
public sealed class InvitationStore(Database database, LinkTokens keys, OutboxStore outbox, TimeProvider clock)
{
    public static readonly TimeSpan Lifetime = TimeSpan.FromDays(3);

    /// <summary>A new helper, who cannot sign in before the link was used. Done carries the invitation.</summary>
    /// <param name="who">The owner.</param>
    /// <param name="account">Of the helper, with a password that nobody knows.</param>
    /// <param name="formKey">Of the form: sent twice, it makes one helper.</param>
    /// <param name="mail">What the helper is sent, given the invitation; not where there is no address.</param>
    public Outcome Invite(Who who, Account account, string formKey, Func<long, WrittenMail> mail)
    {
        var now = clock.GetUtcNow();
        return database.WriteOnceAsOwner(who, formKey, now, c =>
        {
            if (PeopleStore.IsTaken(c, account.NormalizedName, by: null))
                return new Outcome.Refused(new SignInNameTaken());
            AccountStore.Insert(c, account, now);
            return new Outcome.Done(New(c, account, mail));
        });
    }

    /// <summary>The same for a helper on file. The old password works until the link was used.</summary>
    public Outcome Renew(Who who, string accountId, Func<long, WrittenMail> mail) => database.WriteAsOwner(who, c =>
        c.QuerySingleOrDefault<Account>(HelperSql, new { accountId }) is { } account ? new Outcome.Done(New(c, account, mail)) : new Outcome.Absent());

    private const string HelperSql = $"SELECT {AccountStore.Columns} FROM account WHERE id = @accountId AND role = 'Bench' AND ended_at IS NULL";

    private long New(SqliteConnection connection, Account account, Func<long, WrittenMail> mail)
    {
        var id = connection.ExecuteScalar<long>(NewSql, new { account.Id, Expires = clock.GetUtcNow() + Lifetime });
        if (account.Mail is { } address && SessionStore.ShopHasMail(connection) && mail(id) is var (subject, body))
            outbox.Queue(connection, new NewMail(MailKind.ShopNotice, null, subject, body) { ToAddress = address, InvitationId = id });
        return id;
    }

    private const string NewSql = """
        DELETE FROM invitation WHERE account_id = @Id;
        INSERT INTO invitation (account_id, expires_at) VALUES (@Id, @Expires) RETURNING id
        """;

    /// <summary>The secret part of its link; null where it was used or voided.</summary>
    public string? Token(Who who, long id) => database.Read(c =>
        who.IsOwner && c.QuerySingleOrDefault<string>("SELECT secret FROM invitation WHERE id = @id", new { id }) is { } secret ? keys.Token(LinkPurpose.Invitation, id, secret) : null);

    /// <summary>Whose password the link sets; null where it is used, too old or wrong.</summary>
    public Account? Behind(string token) => database.Read(c => Behind(c, token));

    private Account? Behind(SqliteConnection connection, string token) =>
        LinkTokens.Claimed(token) is { } id
        && connection.QuerySingleOrDefault<string>(SecretSql, new { id, Now = clock.GetUtcNow() }) is { } secret && keys.Fits(token, LinkPurpose.Invitation, id, secret)
            ? connection.QuerySingleOrDefault<Account>(InvitedSql, new { id })
            : null;

    private const string SecretSql = "SELECT secret FROM invitation WHERE id = @id AND expires_at > @Now";

    private const string InvitedSql = $"""
        SELECT {AccountStore.Columns} FROM account WHERE id = (SELECT account_id FROM invitation WHERE id = @id) AND ended_at IS NULL
        """;

    /// <summary>Saves the password; whatever else signed in before is taken away, and every session ends. Absent where the link is no longer open.</summary>
    /// <param name="token">Of the link.</param>
    /// <param name="account">With the new password's hash and stamps.</param>
    public Outcome Accept(string token, Account account) => database.Write<Outcome>(c =>
    {
        if (Behind(c, token)?.Id != account.Id)
            return new Outcome.Absent();
        NewPasswordStore.Set(c, account);
        c.Execute("DELETE FROM invitation WHERE account_id = @Id", new { account.Id });
        return new Outcome.Done(1);
    });
}
