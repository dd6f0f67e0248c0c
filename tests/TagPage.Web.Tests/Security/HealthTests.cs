using System.Net;
using Dapper;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

public sealed class HealthTests : IDisposable
{
    private readonly TestShop _shop = new() { IsNew = true };

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("DELETE FROM migration")]
    [InlineData("INSERT INTO migration (name, applied_at) VALUES ('9999-newer.sql', '2026-11-25T10:00:00.000Z')")]
    [InlineData("ALTER TABLE migration RENAME COLUMN name TO mislaid")]
    public async Task Ready_fails_without_details_when_the_schema_is_not_this_programs_and_live_does_not_ask(string fault)
    {
        var watcher = _shop.Stranger();
        Assert.Equal("Healthy", (await watcher.Open("/healthz/ready")).Text);

        _shop.Database.Write(c => c.Execute(fault));

        var ready = await watcher.Open("/healthz/ready");
        Assert.Equal(HttpStatusCode.ServiceUnavailable, ready.Status);
        Assert.Equal("Unhealthy", ready.Text);
        Assert.Equal(HttpStatusCode.OK, (await watcher.Get("/healthz/live")).StatusCode);
    }

    /// <summary>What it knew is told for ten seconds, whatever the clock says.</summary>
    [Theory]
    [InlineData(-48)]
    [InlineData(0)]
    [InlineData(48)]
    public void Clock_that_is_set_keeps_no_old_answer(int hours)
    {
        var clock = new SetClock();
        var probe = new WriteProbe(_shop.Database, clock, NullLogger<WriteProbe>.Instance);
        Assert.True(probe.Works());
        _shop.Database.Write(c => c.Execute("DROP TABLE write_probe"));
        clock.Now += TimeSpan.FromHours(hours);

        clock.Ran += TimeSpan.FromSeconds(9);
        Assert.True(probe.Works());
        clock.Ran += TimeSpan.FromSeconds(1);
        Assert.False(probe.Works());
    }

    [Fact]
    public async Task Asking_whether_writing_works_leaves_nothing_behind()
    {
        var before = _shop.Database.Dump();

        Assert.Equal("Healthy", (await _shop.Stranger().Open("/healthz/ready")).Text);

        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Ready_fails_once_the_daily_look_has_found_damage_and_the_log_says_which()
    {
        _shop.Records.Family();
        Assert.Equal("Healthy", (await _shop.Stranger().Open("/healthz/ready")).Text);
        // A row that its own table would refuse, put there behind its back.
        _shop.Records.Change("PRAGMA ignore_check_constraints = ON; UPDATE client SET name = ''; PRAGMA ignore_check_constraints = OFF;");

        _shop.Get<DatabaseCheck>().Look();

        Assert.Equal("Unhealthy", (await _shop.Stranger().Open("/healthz/ready")).Text);
        Assert.Contains(_shop.Log.All, l => l.StartsWith("Critical The database is damaged (CHECK constraint failed in client)", StringComparison.Ordinal));
    }
}
