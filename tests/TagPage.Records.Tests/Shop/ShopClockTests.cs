using System.Globalization;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Backups;
using TagPage.Records.DueDates;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Tests.Cast;
using TagPage.Records.Tests.Permissions;

namespace TagPage.Records.Tests.Shop;

/// <summary>
/// Days that begin twice or not at midnight. When they do is from the IANA time zone database (2025b), which .NET reads from the system; the instants were worked out
/// by hand from its rules, and Python’s zoneinfo agrees with each.
/// </summary>
public sealed class ShopClockTests : IDisposable
{
    private readonly Street _street = new();

    private ShopClock Clock => _street.Clock;

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("Europe/London", "2026-11-24T12:00Z", "2026-11-25T00:00Z", "an ordinary one")]
    [InlineData("America/Havana", "2026-10-31T12:00Z", "2026-11-01T04:00Z", "twice: 1:00 goes back to 0:00")]
    [InlineData("America/Havana", "2026-11-01T04:30Z", "2026-11-02T05:00Z", "the day has begun, though midnight comes again")]
    [InlineData("Atlantic/Azores", "2026-10-24T12:00Z", "2026-10-25T00:00Z", "twice: 1:00 goes back to 0:00")]
    [InlineData("Atlantic/Azores", "2026-03-28T12:00Z", "2026-03-29T01:00Z", "missing: 0:00 goes on to 1:00")]
    [InlineData("America/Santiago", "2026-09-05T12:00Z", "2026-09-06T04:00Z", "missing: 0:00 goes on to 1:00")]
    [InlineData("America/Santiago", "2026-04-04T12:00Z", "2026-04-05T04:00Z", "24:00 goes back to 23:00")]
    [InlineData("Asia/Beirut", "2026-03-28T12:00Z", "2026-03-28T22:00Z", "missing: 0:00 goes on to 1:00")]
    [InlineData("Asia/Beirut", "2026-10-24T12:00Z", "2026-10-24T22:00Z", "24:00 goes back to 23:00")]
    [InlineData("Africa/Cairo", "2026-04-23T12:00Z", "2026-04-23T22:00Z", "missing: 0:00 goes on to 1:00")]
    [InlineData("America/St_Johns", "2010-11-06T12:00Z", "2010-11-07T02:30Z", "twice: 0:01 goes back to 23:01")]
    [InlineData("America/St_Johns", "2010-11-07T02:45Z", "2010-11-07T03:30Z", "yesterday came back for an hour")]
    [InlineData("Pacific/Apia", "2011-12-29T20:00Z", "2011-12-30T10:00Z", "30 December was left out")]
    public void Tomorrow_begins_at_the_first_instant_of_its_day(string zone, string now, string begins, string why)
    {
        Set(zone, now);
        Assert.True(Clock.Midnight == At(begins), $"{zone}, {why}: {Clock.Midnight:u}");
    }

    /// <summary>Of every zone there is: the minute before is another day, and neither comes sooner.</summary>
    [Fact]
    public void In_no_zone_does_a_day_begin_sooner_or_later()
    {
        var zones = TimeZoneInfo.GetSystemTimeZones();
        Assert.True(zones.Count > 300, $"Only {zones.Count} zones were found.");
        foreach (var zone in zones)
            for (var day = new DateOnly(2026, 1, 2); day.Year < 2028; day = day.AddDays(1))
            {
                var noon = new DateTimeOffset(day.AddDays(-1), new TimeOnly(12, 0), TimeSpan.Zero) - zone.BaseUtcOffset;
                var begins = zone.Next(day.ToDateTime(TimeOnly.MinValue), noon)!.Value;
                if (DayOf(zone, begins) != day || DayOf(zone, begins.AddMinutes(-1)) == day || DayOf(zone, begins.AddMinutes(-30)) == day)
                    Assert.Fail($"{zone.Id}, {day}: {begins:u}");
            }
    }

    private static DateOnly DayOf(TimeZoneInfo zone, DateTimeOffset instant) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(instant, zone).DateTime);

    /// <summary>Looked at every quarter of an hour, as the program does, through the nights in which clocks change.</summary>
    [Theory]
    [InlineData("Europe/Helsinki", "2026-03-27", "3:00 goes on to 4:00")]
    [InlineData("Europe/Helsinki", "2026-10-23", "4:00 goes back to 3:00")]
    [InlineData("Europe/Madrid", "2026-10-23", "3:00 goes back to 2:00")]
    [InlineData("America/Havana", "2026-10-30", "1:00 goes back to 0:00")]
    [InlineData("America/Santiago", "2026-09-04", "0:00 goes on to 1:00")]
    public void Each_night_gets_one_backup(string zone, string from, string why)
    {
        Set(zone, from + "T12:00Z");
        DateTime? last = Clock.OnTheWall(Clock.Now).DateTime;
        var nights = new List<DateOnly>();
        for (var quarter = 0; quarter < 4 * 96; quarter++)
        {
            _street.Time.Advance(TimeSpan.FromMinutes(15));
            var wall = Clock.OnTheWall(Clock.Now).DateTime;
            if (!BackupTime.IsDue(last, wall))
                continue;
            last = wall;
            nights.Add(DateOnly.FromDateTime(wall));
        }
        Assert.True(nights.Count == 4 && nights.Distinct().Count() == 4, $"{zone}, {why}: {string.Join(", ", nights)}");
    }

    /// <summary>The dates kept at rackets are worked out anew as a day begins: the same nights, looked at every minute.</summary>
    [Theory]
    [InlineData("America/Havana", "2026-10-31T12:00Z", "2026-11-01T04:00Z", "2026-11-02T05:00Z")]
    [InlineData("Atlantic/Azores", "2026-10-24T12:00Z", "2026-10-25T00:00Z", "2026-10-26T01:00Z")]
    [InlineData("America/Santiago", "2026-09-05T12:00Z", "2026-09-06T04:00Z", "2026-09-07T03:00Z")]
    [InlineData("Asia/Beirut", "2026-10-24T12:00Z", "2026-10-24T22:00Z", "2026-10-25T22:00Z")]
    public void Each_day_begins_once_for_dates_kept_at_rackets(string zone, string from, string first, string second)
    {
        Set(zone, from);
        var dates = new DueDateKeeper(_street.Database, _street.Time);
        dates.BeginDay();
        var began = new List<DateTimeOffset>();
        for (var (minute, day) = (0, Day()); minute < 42 * 60; minute++)
        {
            _street.Time.Advance(TimeSpan.FromMinutes(1));
            dates.BeginDay();
            if (day != (day = Day()))
                began.Add(_street.Time.GetUtcNow());
        }
        Assert.Equal([At(first), At(second)], began);

        string Day() => _street.Records.Text("SELECT day FROM due_day");
    }

    /// <summary>From nine in the evening until eight, by the clock on the wall.</summary>
    [Theory]
    [InlineData("Europe/London", "2026-11-24T12:00Z", 11)]
    [InlineData("America/Havana", "2026-10-31T12:00Z", 12)]
    [InlineData("America/Santiago", "2026-09-05T12:00Z", 10)]
    public void Nobody_is_reminded_in_the_quiet_hours_of_a_longer_or_shorter_night(string zone, string from, int quiet)
    {
        using var scene = new Scene();
        scene.Street.Records.Change("UPDATE shop SET time_zone = @zone, quiet_from_hour = 21, quiet_until_hour = 8", new { zone });
        scene.Street.Time.AdjustTime(At(from));
        using var worker = new BatchWorker(scene.Batches, new ShopStore(scene.Street.Database), scene.Street.Clock, scene.Street.Time, NullLogger<BatchWorker>.Instance);
        var minutes = 0;
        for (var minute = 0; minute < 26 * 60; minute++, scene.Street.Time.Advance(TimeSpan.FromMinutes(1)))
            minutes += worker.IsQuiet ? 1 : 0;
        Assert.Equal(quiet * 60, minutes);
    }

    private static DateTimeOffset At(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);

    private void Set(string zone, string now)
    {
        _street.Records.Change("UPDATE shop SET time_zone = @zone", new { zone });
        _street.Time.AdjustTime(At(now));
    }
}
