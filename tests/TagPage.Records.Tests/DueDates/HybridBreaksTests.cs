using Dapper;
using TagPage.Core.Forecast;
using TagPage.Records.DueDates;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>What broke is counted by the material of the mains; in a hybrid the crosses are of another.</summary>
public sealed class HybridBreaksTests : IDisposable
{
    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("mains_id", false)]
    [InlineData("crosses_id", true)]
    public void Breaks_on_polyester_mains_count_for_polyester_mains_and_no_others(string gut, bool counts)
    {
        foreach (var day in new[] { 1, 20 })
        {
            var job = _street.Records.Job(_street.Racket, new(2026, 9, day));
            _street.Records.Change($"UPDATE job SET ended_on = date(strung_on, '+10 days'), ended_how = 'Wear', {gut} = {_street.Records.Kind("Gannet", "NaturalGut", 1.30m)} WHERE id = {job}");
            _street.Records.Change($"UPDATE job SET hours_played = 12 WHERE id = {job}");
        }
        var row = _street.Database.Read(c => Histories.Into(c, c.QuerySingle<ForecastRow>($"SELECT {ForecastRow.Columns} FROM forecast f")));

        Assert.Equal(counts, row!.Work(Street.Today, StartingValues.Default).Limits.OfType<BreakageLimit>().Any(limit => limit.BrokeAfter.Count == 2));
    }
}
