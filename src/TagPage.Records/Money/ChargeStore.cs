using Dapper;
using TagPage.Core.Money;
using TagPage.Records.Accounts;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>The price of a job in lines. The shop alone sees and writes them.</summary>
public sealed class ChargeStore(Database database, ShopClock clock)
{
    public sealed record Sheet
    {
        public long JobId { get; init; }
        public long Ticket { get; init; }
        public long? PriceMinor { get; init; }
        public long LaidMinor { get; init; }
        public DateOnly? PaidOn { get; init; }
        public string Currency { get; init; } = "";

        /// <summary>Of the bill that the job is on; null for none.</summary>
        public int? BillYear { get; init; }
        public int? BillNumber { get; init; }

        /// <summary>2026-0007; null where it is on no bill.</summary>
        public string? Bill => BillYear is { } year && BillNumber is { } number ? BillRow.NameOf(year, number) : null;

        /// <summary>The job's.</summary>
        public int Version { get; init; }
        public IReadOnlyList<ChargeLine> Lines { get; init; } = [];

        public long OpenMinor => (PriceMinor ?? 0) - LaidMinor;

        /// <summary>Asked before the amount of something changes that is paid or on a bill.</summary>
        /// <param name="place">Of the amount in the form.</param>
        /// <param name="price">The new one.</param>
        public IEnumerable<Oddity> Oddities(string place, long? price)
        {
            if (price == PriceMinor)
                yield break;
            if (LaidMinor > 0)
                yield return new PaidPriceChanges(place, Ticket, PriceMinor ?? 0, price ?? 0, LaidMinor, Currency);
            if (Bill is { } bill)
                yield return new BilledPriceChanges(place, Ticket, bill);
        }
    }

    public Sheet? Get(Who who, long job) => database.Read(c =>
        c.QuerySingleOrDefault<Sheet>(GetSql, new { who.IsShop, job }) is { } sheet ? sheet with { Lines = ChargeLineStore.Of(c, job) } : null);

    private const string GetSql = $"""
        SELECT j.id AS job_id, j.ticket, j.price_minor, j.paid_on, j.version, COALESCE((SELECT currency FROM shop), 'GBP') AS currency,
               (SELECT COALESCE(SUM(amount_minor), 0) FROM payment_share WHERE job_id = j.id) AS laid_minor,
               b.year AS bill_year, b.number AS bill_number
        FROM job j
        LEFT JOIN bill b ON b.id = (SELECT b.id FROM bill_line l JOIN bill b ON b.id = l.bill_id WHERE l.job_id = j.id AND {BillLineStore.Holds} LIMIT 1)
        WHERE j.id = @job AND @IsShop
        """;

    public sealed record Change
    {
        public ChargeKind Kind { get; init; }
        public long? WasMinor { get; init; }
        public long? IsMinor { get; init; }
        public DateTimeOffset MadeAt { get; init; }

        /// <summary>By whom, or by what way: Shop, Client, Event, Program.</summary>
        public string MadeBy { get; init; } = "";

        /// <summary>Who of the shop; null where one person alone signs in, or nobody was signed in.</summary>
        public string? By { get; init; }
    }

    /// <summary>Every change of an amount, the newest first.</summary>
    public IReadOnlyList<Change> Changes(Who who, long job) => database.Read(c => c.Query<Change>(ChangesSql, new { who.IsShop, job }).AsList());

    private const string ChangesSql = $"""
        SELECT h.kind, h.was_minor, h.is_minor, h.made_at, iif(a.id IS NULL, h.made_by, 'Shop') AS made_by, iif({AccountStore.Several}, a.name, NULL) AS by
        FROM charge_change h
        LEFT JOIN account a ON a.id = h.made_by
        WHERE h.job_id = @job AND @IsShop
        ORDER BY h.id DESC
        """;

    /// <param name="who">Only the shop may.</param>
    /// <param name="job">Its number.</param>
    /// <param name="version">Of the job, as the form showed it.</param>
    /// <param name="lines">All lines from now on.</param>
    public Outcome Save(Who who, long job, int version, IReadOnlyList<ChargeLine> lines)
    {
        var now = clock.Now;
        return database.WriteAsShop(who, c =>
        {
            if (c.QuerySingleOrDefault<Sheet>(GetSql, new { who.IsShop, job }) is not { } sheet)
                return new Outcome.Absent();
            if (sheet.Version != version)
                return Outcome.Stale;
            // What a prepaid restring took off is given back as such, and not edited.
            lines = [.. lines.Where(line => line.Kind != ChargeKind.Prepaid), .. ChargeLineStore.Of(c, job).Where(line => line.Kind == ChargeKind.Prepaid)];
            if (lines.Any(line => line.AmountMinor is < -MinorUnits.Most or > MinorUnits.Most) || lines.Sum(line => line.AmountMinor) is < 0 or > MinorUnits.Most)
                return new Outcome.Refused(new PriceImpossible());
            ChargeLineStore.Replace(c, job, lines, who, now);
            return new Outcome.Done(job);
        });
    }
}
