using Dapper;
using TagPage.Records.DueDates;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>A forecast and kept dates are looked up, not worked out for the whole shop: SQLite's own plan says so.</summary>
public sealed class ForecastPlanTests : IDisposable
{
    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    [Fact]
    public void One_rackets_forecast_touches_no_whole_table()
    {
        var plan = _street.Database.Read(c => c.Query<PlanStep>($"EXPLAIN QUERY PLAN SELECT {ForecastRow.Columns} FROM forecast f WHERE f.racket_id = 1").AsList());

        Assert.NotEmpty(plan);
        Assert.DoesNotContain(plan, step => step.Detail.StartsWith("SCAN", StringComparison.Ordinal) || step.Detail.StartsWith("MATERIALIZE", StringComparison.Ordinal));
    }

    [Fact]
    public void Kept_dates_of_some_clients_are_found_by_client_and_player_even_where_no_date_was_kept_as_the_shop_was_counted()
    {
        _street.Records.Change(CountedBeforeDates);
        _street.Database.Dispose();

        var plan = _street.Database.Read(c => c.Query<PlanStep>("EXPLAIN QUERY PLAN " + DueStore.KeptSql, new { clients = "[1]", today = Street.Today }).AsList());

        Assert.Contains(plan, step => step.Detail.StartsWith("SEARCH p USING INDEX player_by_client", StringComparison.Ordinal));
        Assert.Contains(plan, step => step.Detail.StartsWith("SEARCH r USING", StringComparison.Ordinal) && step.Detail.Contains("(player_id=?)", StringComparison.Ordinal));
    }

    // As after bringing a large shop in: https://www.sqlite.org/fileformat2.html#stat1tab
    private const string CountedBeforeDates = """
        ANALYZE;
        DELETE FROM sqlite_stat1 WHERE tbl IN ('racket', 'player');
        INSERT INTO sqlite_stat1 (tbl, idx, stat)
        VALUES ('racket', 'racket_due', '0 0 0 0'), ('racket', 'sqlite_autoindex_racket_1', '100000 2 1'), ('player', 'player_by_client', '50000 2 2');
        """;

    private sealed record PlanStep
    {
        public string Detail { get; init; } = "";
    }
}
