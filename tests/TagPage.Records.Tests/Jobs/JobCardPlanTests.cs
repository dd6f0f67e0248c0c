using Dapper;
using TagPage.Records.Jobs;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

/// <summary>However many jobs there were, the bench looks its few up: SQLite's own plan says so.</summary>
public sealed class JobCardPlanTests : IDisposable
{
    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(BenchStore.OpenSql, "job_on_bench")]
    [InlineData(BenchStore.ReadySql, "job_on_bench")]
    [InlineData(BenchStore.CameInSql, "job_received")]
    [InlineData(JobStore.GetSql, "PRIMARY KEY")]
    public void Jobs_are_found_by_an_index_and_all_that_hangs_on_them_too(string sql, string index)
    {
        var plan = _street.Database.Read(c => c.Query("EXPLAIN QUERY PLAN " + sql, new { Most = 1, day = new DateOnly(2026, 11, 25), id = 1, IsShop = true })
            .Select(row => (string)row.detail).ToList());

        Assert.Contains(plan, line => line.StartsWith("SEARCH j ", StringComparison.Ordinal) && line.Contains(index, StringComparison.Ordinal));
        Assert.DoesNotContain(plan, line => line.StartsWith("SCAN", StringComparison.Ordinal) || line.StartsWith("MATERIALIZE", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(BackStore.LastSql, "job_moved")]
    [InlineData(JobMinutesStore.TimedSql, "job_timed")]
    public void Last_move_and_timed_jobs_are_found_without_sorting_all_that_ever_were(string sql, string index)
    {
        var plan = _street.Database.Read(c => c.Query("EXPLAIN QUERY PLAN " + sql, new { Newest = 1, since = DateTimeOffset.UnixEpoch, IsShop = true })
            .Select(row => (string)row.detail).ToList());

        Assert.Contains(plan, line => line.Contains(index, StringComparison.Ordinal));
        Assert.DoesNotContain(plan, line => line == "SCAN job" || line == "SCAN j" || line.Contains("FOR ORDER BY", StringComparison.Ordinal) && index == "job_timed");
    }
}
