using System.Net;
using Dapper;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

public sealed class HealthTests : IDisposable
{
    private readonly TestShop _shop = new();

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
}
