using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Money;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>Writes payments down and lays them against jobs. Runs in the caller's transaction.</summary>
internal static class PaymentLineStore
{
    internal static long Add(SqliteConnection connection, Party party, DateOnly paidOn, PaymentMethod method, long amount, string note, Who who, DateTimeOffset now) =>
        connection.ExecuteScalar<long>(AddSql, new { party.ClientId, party.PayerId, paidOn, Method = method.ToString(), amount, note, now, who.Name });

    private const string AddSql = """
        INSERT INTO payment (client_id, payer_id, paid_on, method, amount_minor, note, made_at, made_by)
        VALUES (@ClientId, @PayerId, @paidOn, @Method, @amount, @note, @now, @Name)
        RETURNING id
        """;

    /// <summary>Pays for a job, in whole or in part; or says why not, with nothing written.</summary>
    internal static Refusal? Pay(SqliteConnection connection, ShareStore.Account job, PaymentEntry input, Who who, (DateTimeOffset Now, DateOnly Today) at)
    {
        if ((job.PaidOn is { } paid ? new PaidAlready(job.Ticket, paid) : input.Fault(at.Today) ?? AmountFault(job, input)) is { } why)
            return why;
        if (input.Method is not { } method)
            return FromCredit(connection, job, who, at.Now);
        var amount = input.AmountMinor ?? Math.Max(0, job.OpenMinor);
        var payment = Add(connection, job.Party, input.PaidOn, method, amount, input.Note ?? "", who, at.Now);
        ShareStore.Lay(connection, payment, job.Id, amount, who, at.Now);
        ShareStore.Settle(connection, job.Id, who, at.Now);
        return null;
    }

    private static Refusal? AmountFault(ShareStore.Account job, PaymentEntry input) =>
        input.AmountMinor is null ? null
        : job.PriceMinor is null ? new PriceMissing()
        : input.AmountMinor > job.OpenMinor ? new MoreThanOpen(job.OpenMinor, job.Currency)
        : null;

    private static CreditTooSmall? FromCredit(SqliteConnection connection, ShareStore.Account job, Who who, DateTimeOffset now)
    {
        var free = ShareStore.Free(connection, job.Party);
        if (free.Sum(f => f.Free) < Math.Max(1, job.OpenMinor))
            return new CreditTooSmall(free.Sum(f => f.Free), job.Currency);
        LayFree(connection, free, [job.Id], who, now);
        return null;
    }

    /// <summary>Lays what is free against jobs, oldest money against the first of them; tells how much.</summary>
    internal static long LayFree(SqliteConnection connection, IReadOnlyList<(long Payment, long Free)> free, IReadOnlyList<long> jobs, Who who, DateTimeOffset now)
    {
        var left = new Queue<(long Payment, long Free)>(free);
        var laid = 0L;
        foreach (var job in jobs)
        {
            var open = ShareStore.Of(connection, job)!.OpenMinor;
            while (open > 0 && left.TryDequeue(out var money))
            {
                var part = Math.Min(open, money.Free);
                ShareStore.Lay(connection, money.Payment, job, part, who, now);
                (open, laid) = (open - part, laid + part);
                if (money.Free > part)
                    left = new Queue<(long, long)>([(money.Payment, money.Free - part), .. left]);
            }
            ShareStore.Settle(connection, job, who, now);
        }
        return laid;
    }

    /// <summary>A counter-entry of what was paid and of what of it is laid against jobs; tells which jobs.</summary>
    internal static IReadOnlyList<long> TakeBack(SqliteConnection connection, long payment, Who who, DateTimeOffset now, DateOnly today)
    {
        var counter = connection.ExecuteScalar<long>(CounterSql, new { payment, now, today, who.Name });
        var jobs = connection.Query<long>(JobsSql, new { payment }).AsList();
        connection.Execute(CounterSharesSql, new { payment, counter, now, who.Name });
        foreach (var job in jobs)
            ShareStore.Settle(connection, job, who, now);
        return jobs;
    }

    private const string CounterSql = """
        INSERT INTO payment (client_id, payer_id, paid_on, method, amount_minor, undoes_id, made_at, made_by)
        SELECT client_id, payer_id, @today, method, -amount_minor, id, @now, @Name FROM payment WHERE id = @payment
        RETURNING id
        """;

    private const string JobsSql = "SELECT DISTINCT job_id FROM payment_share WHERE payment_id = @payment AND job_id IS NOT NULL";

    private const string CounterSharesSql = """
        INSERT INTO payment_share (payment_id, job_id, past_ticket, amount_minor, made_at, made_by)
        SELECT @counter, job_id, past_ticket, -SUM(amount_minor), @now, @Name
        FROM payment_share
        WHERE payment_id = @payment
        GROUP BY job_id, past_ticket
        HAVING SUM(amount_minor) <> 0
        """;
}
