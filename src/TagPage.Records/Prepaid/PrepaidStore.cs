using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Prepaid;

/// <summary>Restrings that were paid in advance: sold, used and what is left of them. Only the shop may.</summary>
public sealed class PrepaidStore(Database database, ShopClock clock)
{
    /// <summary>Sold at once.</summary>
    public const int Most = 100;

    /// <summary>What somebody bought, and how far it is used.</summary>
    public sealed record Row
    {
        public long Id { get; init; }
        public DateOnly BoughtOn { get; init; }
        public int Restrings { get; init; }
        public PrepaidCover Covers { get; init; }
        public long AmountMinor { get; init; }
        public long PaymentId { get; init; }
        public int Used { get; init; }

        /// <summary>The payment was taken back.</summary>
        public bool IsUndone { get; init; }

        /// <summary>A bill of it holds.</summary>
        public bool IsBilled { get; init; }

        public int Left => IsUndone ? 0 : Restrings - Used;
    }

    /// <summary>The oldest first, which are used first.</summary>
    public IReadOnlyList<Row> Of(Who who, Party party) => database.Read(c => Of(c, who, party));

    internal static IReadOnlyList<Row> Of(SqliteConnection connection, Who who, Party party) =>
        connection.Query<Row>(OfSql, new { who.IsShop, party.ClientId, party.PayerId }).AsList();

    private const string OfSql = $"""
        SELECT p.id, p.bought_on, p.restrings, p.covers, p.amount_minor, p.payment_id,
               (SELECT COUNT(*) FROM prepaid_use u WHERE u.prepaid_id = p.id AND u.given_back_at IS NULL) AS used,
               EXISTS (SELECT 1 FROM payment t WHERE t.undoes_id = p.payment_id) AS is_undone,
               {BillLineStore.HasSale} AS is_billed
        FROM prepaid p
        WHERE (p.client_id = @ClientId OR p.payer_id = @PayerId) AND @IsShop
        ORDER BY p.bought_on, p.id
        """;

    /// <summary>A sale, for its receipt.</summary>
    public sealed record Sale
    {
        public long Id { get; init; }
        public DateOnly BoughtOn { get; init; }
        public int Restrings { get; init; }
        public PrepaidCover Covers { get; init; }
        public long AmountMinor { get; init; }
        public int TaxBp { get; init; }
        public PaymentMethod Method { get; init; }
        public long? ClientId { get; init; }
        public long? PayerId { get; init; }
        public string Name { get; init; } = "";

        /// <summary>ISO 639-1; null for somebody who pays for others.</summary>
        public string? Language { get; init; }
    }

    /// <summary>Null where the payment was taken back, and where whose it was is no longer on file.</summary>
    public Sale? Get(Who who, long id) => database.Read(c => c.QuerySingleOrDefault<Sale>(SaleSql, new { who.IsShop, id }));

    private const string SaleSql = """
        SELECT b.id, b.bought_on, b.restrings, b.covers, b.amount_minor, b.tax_bp, p.method, b.client_id, b.payer_id, COALESCE(y.name, c.name) AS name, c.language
        FROM prepaid b
        JOIN payment p ON p.id = b.payment_id
        LEFT JOIN client c ON c.id = b.client_id
        LEFT JOIN payer y ON y.id = b.payer_id
        WHERE b.id = @id AND @IsShop AND COALESCE(y.id, c.id) IS NOT NULL AND NOT EXISTS (SELECT 1 FROM payment u WHERE u.undoes_id = b.payment_id)
        """;

    /// <summary>
    /// How many would be lost with a client’s data: their own, and to the shop also those of somebody who pays for nobody else. Null for
    /// whoever may not delete it.
    /// </summary>
    public int? LostWith(Who who, long client) => database.Read(c =>
    {
        if (!who.IsOwner && who.ClientId != client)
            return (int?)null;
        var parties = c.ExecuteScalar<long?>(OnlyPayerSql, new { client }) is { } payer && who.IsOwner ? new[] { Party.Client(client), Party.Payer(payer) } : [Party.Client(client)];
        return parties.Sum(party => Of(c, Who.Shop, party).Sum(row => row.Left));
    });

    private const string OnlyPayerSql = """
        SELECT payer_id FROM client WHERE id = @client AND NOT EXISTS (SELECT 1 FROM client o WHERE o.payer_id = client.payer_id AND o.id <> client.id)
        """;

    /// <summary>How many a client has left; null for one who never had any, and for whom somebody else pays.</summary>
    public int? LeftOfClient(Who who) => database.Read(c => who.ClientId is not { } client || c.ExecuteScalar<bool>("SELECT payer_id IS NOT NULL FROM client WHERE id = @client", new { client })
        ? null
        : Of(c, Who.Shop, Party.Client(client)) is { Count: > 0 } rows ? rows.Sum(row => row.Left) : (int?)null);

    /// <summary>The money is income on the day it is paid; it is laid against no ticket and is no credit.</summary>
    public Outcome Sell(Who who, Party party, PrepaidEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteOnceAsShop(who, input.FormKey, now, c =>
        {
            if (!PaymentStore.IsThere(c, party))
                return new Outcome.Absent();
            if (input.BoughtOn > today)
                return new Outcome.Refused(new BoughtInFuture());
            if (input.BoughtOn < ShopClock.Earliest)
                return new Outcome.Refused(new BoughtLongAgo());
            if (input.Restrings is < 1 or > Most)
                return new Outcome.Refused(new RestringsUnlikely(Most));
            if (input.AmountMinor is <= 0 or > MinorUnits.Most)
                return new Outcome.Refused(new PrepaidAmountMissing());
            var payment = PaymentLineStore.Add(c, party, input.BoughtOn, input.Method, input.AmountMinor, $"{input.Restrings} prepaid restrings", who, now);
            return new Outcome.Done(c.ExecuteScalar<long>(SellSql, new
            {
                party.ClientId,
                party.PayerId,
                input.BoughtOn,
                input.Restrings,
                Covers = input.Covers.ToString(),
                input.AmountMinor,
                PriceListStore.Get(c).TaxBp,
                payment,
                Note = input.Note ?? "",
                now,
                who.Name,
            }));
        });
    }

    private const string SellSql = """
        INSERT INTO prepaid (client_id, payer_id, bought_on, restrings, covers, amount_minor, tax_bp, payment_id, note, made_at, made_by)
        VALUES (@ClientId, @PayerId, @BoughtOn, @Restrings, @Covers, @AmountMinor, @TaxBp, @payment, @Note, @now, @Name)
        RETURNING id
        """;

    /// <summary>A ticket as far as prepaid restrings go.</summary>
    /// <param name="Left">Of whoever pays for it.</param>
    /// <param name="CoveredMinor">What one of them would take off its price, or has taken off.</param>
    /// <param name="IsUsed">One is used for it.</param>
    public sealed record OfTicket(int Left, long CoveredMinor, bool IsUsed);

    /// <summary>Null where whoever pays never had any.</summary>
    public OfTicket? ForJob(Who who, long job) => database.Read(c =>
    {
        if (!who.IsShop || ShareStore.Of(c, job) is not { } account || Of(c, who, account.Party) is not { Count: > 0 } rows)
            return null;
        var lines = ChargeLineStore.Of(c, job);
        var used = lines.Where(line => line.Kind == ChargeKind.Prepaid).Sum(line => -line.AmountMinor);
        return new OfTicket(rows.Sum(row => row.Left), used > 0 ? used : rows.FirstOrDefault(row => row.Left > 0) is { } next ? PrepaidUseStore.Covered(lines, next.Covers).Sum(line => line.AmountMinor) : 0, used > 0);
    });

    /// <summary>One of the oldest that are left takes what it covers off the ticket's price. Done tells the job.</summary>
    public Outcome Use(Who who, long job)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteAsShop(who, c => ShareStore.Of(c, job) is not { } account ? new Outcome.Absent()
            : PrepaidUseStore.Use(c, account, Of(c, who, account.Party).FirstOrDefault(row => row.Left > 0), who, (now, today)) is { } why ? new Outcome.Refused(why)
            : new Outcome.Done(job));
    }

    /// <summary>It was not used for this ticket after all.</summary>
    public Outcome GiveBack(Who who, long job)
    {
        var now = clock.Now;
        return database.WriteAsShop(who, c => ShareStore.Of(c, job) is not { } account ? new Outcome.Absent()
            : PrepaidUseStore.GiveBack(c, job, who, now) ? new Outcome.Done(job)
            : new Outcome.Refused(new NoPrepaidOnIt(account.Ticket)));
    }
}
