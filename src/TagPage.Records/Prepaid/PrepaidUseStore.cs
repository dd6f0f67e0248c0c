using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Storage;

namespace TagPage.Records.Prepaid;

/// <summary>Takes what a prepaid restring covers off a ticket's price, and puts it back. Runs in the caller's transaction.</summary>
internal static class PrepaidUseStore
{
    /// <summary>The lines that one covers, as far as the price as a whole reaches.</summary>
    internal static IReadOnlyList<ChargeLine> Covered(IReadOnlyList<ChargeLine> lines, PrepaidCover covers)
    {
        var left = lines.Sum(line => line.AmountMinor);
        List<ChargeLine> covered = [];
        foreach (var line in lines.Where(line => line.AmountMinor > 0 && Covers(line.Kind, covers)))
        {
            var part = Math.Min(line.AmountMinor, left);
            if (part <= 0)
                break;
            covered.Add(line with { AmountMinor = part });
            left -= part;
        }
        return covered;
    }

    // A price that was agreed for everything is not labour alone.
    private static bool Covers(ChargeKind kind, PrepaidCover covers) => kind switch
    {
        ChargeKind.Labour => true,
        ChargeKind.Whole or ChargeKind.Strings or ChargeKind.Mains or ChargeKind.Crosses or ChargeKind.Adjustment => covers == PrepaidCover.LabourAndStrings,
        _ => false,
    };

    internal static Refusal? Use(SqliteConnection connection, ShareStore.Account job, PrepaidStore.Row? prepaid, Who who, (DateTimeOffset Now, DateOnly Today) at)
    {
        if (IsUsed(connection, job.Id))
            return new PrepaidOnItAlready(job.Ticket);
        if (prepaid is null)
            return new NoPrepaidLeft();
        var lines = ChargeLineStore.Of(connection, job.Id);
        var covered = Covered(lines, prepaid.Covers);
        if (covered.Count == 0 || job.IsCancelled || job.PaidOn is not null || !connection.ExecuteScalar<bool>(IsStringingSql, new { job.Id }))
            return new NothingCovered();
        connection.Execute(UseSql, new { Prepaid = prepaid.Id, job.Id, job.Ticket, at.Today, at.Now, who.Name });
        var off = covered.GroupBy(line => line.TaxBp).Select(rate => new ChargeLine { Kind = ChargeKind.Prepaid, AmountMinor = -rate.Sum(line => line.AmountMinor), TaxBp = rate.Key });
        ChargeLineStore.Replace(connection, job.Id, [.. lines, .. off], who, at.Now);
        return null;
    }

    private const string IsStringingSql = "SELECT mains_id IS NOT NULL FROM job WHERE id = @Id";

    private static bool IsUsed(SqliteConnection connection, long job) =>
        connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM prepaid_use WHERE job_id = @job AND given_back_at IS NULL)", new { job });

    private const string UseSql = """
        INSERT INTO prepaid_use (prepaid_id, job_id, ticket, used_on, made_at, made_by) VALUES (@Prepaid, @Id, @Ticket, @Today, @Now, @Name)
        """;

    /// <summary>False where none is used for it.</summary>
    internal static bool GiveBack(SqliteConnection connection, long job, Who who, DateTimeOffset now)
    {
        if (connection.Execute(GiveBackSql, new { job, now }) == 0)
            return false;
        ChargeLineStore.Replace(connection, job, [.. ChargeLineStore.Of(connection, job).Where(line => line.Kind != ChargeKind.Prepaid)], who, now);
        return true;
    }

    private const string GiveBackSql = "UPDATE prepaid_use SET given_back_at = @now WHERE job_id = @job AND given_back_at IS NULL";
}
