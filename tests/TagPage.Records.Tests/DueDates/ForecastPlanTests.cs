using Dapper;
using TagPage.Records.DueDates;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>One racket's forecast is looked up, not worked out for the whole shop: SQLite's own plan says so.</summary>
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

    private sealed record PlanStep
    {
        public string Detail { get; init; } = "";
    }
}
