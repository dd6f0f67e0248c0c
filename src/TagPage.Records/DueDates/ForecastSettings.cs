using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Forecast;
using TagPage.Records.Shop;

namespace TagPage.Records.DueDates;

/// <summary>The shop's settings that dates depend on, as the transaction sees them.</summary>
public sealed record ForecastSettings
{
    public string TimeZone { get; init; } = new ShopDetails().TimeZone;

    public StartingValues StartingValues { get; init; } = StartingValues.Default;

    /// <summary>The shop's day.</summary>
    public DateOnly DayOf(DateTimeOffset now) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(now, TimeZoneInfo.FindSystemTimeZoneById(TimeZone)).DateTime);

    public static ForecastSettings Of(SqliteConnection connection) =>
        connection.QuerySingleOrDefault<ForecastSettings>(Sql) ?? new ForecastSettings();

    private const string Sql = "SELECT time_zone, COALESCE(starting_values, '{}') AS starting_values FROM shop WHERE id = 1";
}
