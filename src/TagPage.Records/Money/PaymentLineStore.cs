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
    internal static Refusal? Pay(SqliteConnection connection, ShareStore.Account job, PaymentEntry input, Who who, (DateTimeOffset Now, DateOnly Today) at) =>
        job.PaidOn is { } paid ? new PaidAlready(job.Ticket, paid) : PayTogether(connection, [job], input, who, at);

    /// <summary>
    /// Pays for several jobs of one party with one payment, in whole or in part, the first of them first; or says why not, with
    /// nothing written.
    /// </summary>
    internal static Refusal? PayTogether(SqliteConnection connection, IReadOnlyList<ShareStore.Account> jobs, PaymentEntry input, Who who, (DateTimeOffset Now, DateOnly Today) at)
    {
        var open = jobs.Sum(job => Math.Max(0, job.OpenMinor));
        if ((input.Fault(at.Today) ?? AmountFault(jobs, open, input)) is { } why)
            return why;
        if (input.Method is not { } method)
            return FromCredit(connection, jobs, open, who, at.Now);
        var left = input.AmountMinor ?? open;
        var payment = Add(connection, jobs[0].Party, input.PaidOn, method, left, input.Note ?? "", who, at.Now);
        foreach (var job in jobs)
        {
            var part = Math.Min(left, Math.Max(0, job.OpenMinor));
            // Without an amount even a job that has no price is paid by it.
            if (part > 0 || input.AmountMinor is null)
                ShareStore.Lay(connection, payment, job.Id, part, who, at.Now);
            ShareStore.Settle(connection, job.Id, who, at.Now);
            left -= part;
        }
        return null;
    }

    private static Refusal? AmountFault(IReadOnlyList<ShareStore.Account> jobs, long open, PaymentEntry input) =>
        input.AmountMinor is null ? null
        : jobs.All(job => job.PriceMinor is null) ? new PriceMissing()
        : input.AmountMinor > open ? new MoreThanOpen(open, jobs[0].Currency)
        : null;

    private static CreditTooSmall? FromCredit(SqliteConnection connection, IReadOnlyList<ShareStore.Account> jobs, long open, Who who, DateTimeOffset now)
    {
        var free = ShareStore.Free(connection, jobs[0].Party);
        if (free.Sum(f => f.Free) < Math.Max(1, open))
            return new CreditTooSmall(free.Sum(f => f.Free), jobs[0].Currency);
        LayFree(connection, free, [.. jobs.Select(job => job.Id)], who, now);
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
