using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Money;
using TagPage.Records.Accounts;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>Payments: what came in for jobs, what was taken back, what is free. The shop alone sees and writes them.</summary>
public sealed class PaymentStore(Database database, ShopClock clock)
{
    /// <summary>A payment as far as it concerns a job, or as a whole.</summary>
    public sealed record Row
    {
        public long Id { get; init; }
        public DateOnly PaidOn { get; init; }
        public PaymentMethod Method { get; init; }

        /// <summary>All that came in; below zero for a counter-entry.</summary>
        public long AmountMinor { get; init; }

        /// <summary>What of it is laid against the job.</summary>
        public long LaidMinor { get; init; }

        public string Note { get; init; } = "";
        public string FromName { get; init; } = "";
        public string MadeBy { get; init; } = "";

        /// <summary>Who of the shop took it; null where one person alone signs in, or nobody was signed in.</summary>
        public string? By { get; init; }
        public DateTimeOffset MadeAt { get; init; }

        /// <summary>The payment that this takes back.</summary>
        public long? UndoesId { get; init; }
        public bool IsUndone { get; init; }

        /// <summary>Jobs it is laid against.</summary>
        public int Jobs { get; init; }

        /// <summary>Bought in advance with it; null for none.</summary>
        public int? Restrings { get; init; }
    }

    private const string Columns = $"""
        p.id, p.paid_on, p.method, p.amount_minor, p.note, p.made_by, (SELECT a.name FROM account a WHERE a.id = p.made_by AND {AccountStore.Several}) AS by, p.made_at, p.undoes_id,
        EXISTS (SELECT 1 FROM payment u WHERE u.undoes_id = p.id) AS is_undone,
        COALESCE(y.name, c.name, '') AS from_name,
        (SELECT COUNT(DISTINCT o.job_id) FROM payment_share o WHERE o.payment_id = p.id) AS jobs,
        (SELECT b.restrings FROM prepaid b WHERE b.payment_id = p.id) AS restrings
        """;

    /// <summary>Those laid against a job, counter-entries too.</summary>
    public IReadOnlyList<Row> OfJob(Who who, long job) => database.Read(c => c.Query<Row>(OfJobSql, new { who.IsShop, job }).AsList());

    private const string OfJobSql = $"""
        SELECT {Columns}, SUM(s.amount_minor) AS laid_minor
        FROM payment_share s
        JOIN payment p ON p.id = s.payment_id
        LEFT JOIN client c ON c.id = p.client_id
        LEFT JOIN payer y ON y.id = p.payer_id
        WHERE s.job_id = @job AND @IsShop
        GROUP BY p.id
        ORDER BY p.id
        """;

    public Row? Get(Who who, long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { who.IsOwner, id }));

    private const string GetSql = $"""
        SELECT {Columns}, (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.payment_id = p.id) AS laid_minor
        FROM payment p
        LEFT JOIN client c ON c.id = p.client_id
        LEFT JOIN payer y ON y.id = p.payer_id
        WHERE p.id = @id AND @IsOwner
        """;

    /// <summary>What whoever pays for the job has in credit.</summary>
    public long? CreditFor(Who who, long job) => database.Read(c =>
        who.IsShop && ShareStore.Of(c, job) is { } account ? ShareStore.Free(c, account.Party).Sum(f => f.Free) : (long?)null);

    /// <summary>For one job: all that is open, a part of it, or from credit.</summary>
    public Outcome PayJob(Who who, long job, PaymentEntry input)
    {
        var at = (clock.Now, clock.Today);
        return database.WriteAsShop(who, c =>
        {
            if (ShareStore.Of(c, job) is not { } account)
                return new Outcome.Absent();
            Outcome Pay() => PaymentLineStore.Pay(c, account, input, who, at) is { } why ? new Outcome.Refused(why) : new Outcome.Done(job);
            return input.AmountMinor is null ? Pay() : FormKeys.Once(c, who, input.FormKey, at.Now, Pay);
        });
    }

    /// <summary>
    /// What somebody pays on their account: laid against what they owe, the oldest first; the rest stays in credit. Without a
    /// kind of payment, what they have in credit is laid so. Done carries how much was laid.
    /// </summary>
    public Outcome PayAccount(Who who, Party party, PaymentEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteAsOwner(who, c =>
        {
            if (!IsThere(c, party))
                return new Outcome.Absent();
            return FormKeys.Once(c, who, input.FormKey, now, () =>
            {
                if (input.Fault(today) is { } why)
                    return new Outcome.Refused(why);
                if (input.Method is { } method && input.AmountMinor is { } amount)
                    PaymentLineStore.Add(c, party, input.PaidOn, method, amount, input.Note ?? "", who, now);
                else if (input.Method is not null)
                    return new Outcome.Refused(new AmountMissing());
                var laid = PaymentLineStore.LayFree(c, ShareStore.Free(c, party), ShareStore.OpenJobs(c, party), who, now);
                return laid == 0 && input.Method is null ? new Outcome.Refused(new NothingToLay()) : new Outcome.Done(laid);
            });
        });
    }

    internal static bool IsThere(SqliteConnection connection, Party party) => connection.ExecuteScalar<bool>(IsThereSql, new { party.ClientId, party.PayerId });

    private const string IsThereSql = "SELECT EXISTS (SELECT 1 FROM client WHERE id = @ClientId) OR EXISTS (SELECT 1 FROM payer WHERE id = @PayerId)";

    /// <summary>A party's payments, the newest first.</summary>
    public IReadOnlyList<Row> OfParty(Who who, Party party) => database.Read(c => c.Query<Row>(OfPartySql, new { who.IsOwner, party.ClientId, party.PayerId }).AsList());

    private const string OfPartySql = $"""
        SELECT {Columns}, (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.payment_id = p.id) AS laid_minor
        FROM payment p
        LEFT JOIN client c ON c.id = p.client_id
        LEFT JOIN payer y ON y.id = p.payer_id
        WHERE (p.client_id = @ClientId OR p.payer_id = @PayerId) AND @IsOwner
        ORDER BY p.id DESC
        LIMIT 100
        """;

    private const string PrepaidUsedSql = """
        SELECT COUNT(*) FROM prepaid b JOIN prepaid_use u ON u.prepaid_id = b.id AND u.given_back_at IS NULL WHERE b.payment_id = @id
        """;

    /// <summary>Takes a payment back by a counter-entry; both stay. Done carries a job it was laid against, or nothing.</summary>
    public Outcome TakeBack(Who who, long id)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteAsOwner(who, c =>
        {
            if (c.QuerySingleOrDefault<Row>(GetSql, new { who.IsOwner, id }) is not { } row)
                return new Outcome.Absent();
            if (row.IsUndone || row.UndoesId is not null)
                return new Outcome.Refused(new TakenBackAlready());
            if (c.ExecuteScalar<int>(PrepaidUsedSql, new { id }) is > 0 and var used)
                return new Outcome.Refused(new PrepaidUsed(used));
            return new Outcome.Done(PaymentLineStore.TakeBack(c, id, who, now, today) is [var job, ..] ? job : 0);
        });
    }
}
