using System.Net;
using Dapper;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Faults;

public sealed class FullDiskTests : IDisposable
{
    private readonly TestShop _shop = new() { IsNew = true };

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Full_disk_is_said_plainly_reading_goes_on_and_writing_comes_back_without_a_restart()
    {
        var owner = _shop.Owner();
        Limit(_shop.Database, pages: 1);

        var (saved, refused) = await AddUntilRefused(owner);

        Assert.Equal(HttpStatusCode.InsufficientStorage, refused.Status);
        Assert.Contains("The disk is full", refused.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("Sqlite", refused.Text, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(saved, _shop.Get<StringStore>().List().Count);
        Assert.Equal(HttpStatusCode.OK, (await owner.Get("/shop/strings")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger().Get("/healthz/live")).StatusCode);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, (await _shop.Stranger().Get("/healthz/ready")).StatusCode);

        Limit(_shop.Database, pages: int.MaxValue);
        var answer = await Add(owner, "Heron after all");

        Assert.Equal("/shop/strings", answer.Location);
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger().Get("/healthz/ready")).StatusCode);
        Assert.Equal(saved + 1, _shop.Get<StringStore>().List().Count);
        Assert.Equal("ok", _shop.Database.Read(c => c.ExecuteScalar<string>("PRAGMA integrity_check")));
    }

    private static async Task<(int Saved, WebPage Refused)> AddUntilRefused(Visitor owner)
    {
        for (var n = 0; n < 500; n++)
        {
            var answer = await Add(owner, "Heron " + n);
            if (answer.Location is null)
                return (n, answer);
        }
        throw new InvalidOperationException("The disk never filled.");
    }

    private static async Task<WebPage> Add(Visitor owner, string name) =>
        await owner.Send(await owner.Open("/shop/strings/new"),
            ("Input.Name", name), ("Input.Material", "Polyester"), ("Input.GaugeMm", "1.25"), ("Input.Note", new string('n', 500)));

    /// <summary>
    /// SQLite's own way to play a full disk (error 13). It holds for one connection, here the one that writes. Fewer pages
    /// than there are now means: not one more.
    /// </summary>
    private static void Limit(Database database, int pages) => database.Write(c => c.Execute($"PRAGMA max_page_count = {pages}"));
}
