using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Faults;

public sealed class KeyFileTests : IDisposable
{
    private readonly OwnersDesk _desk = new();

    public void Dispose() => _desk.Dispose();

    [Fact]
    public async Task Every_key_is_the_owners_alone_from_the_beginning()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Rights are kept otherwise there.");
        await Used();

        Assert.Equal(["finders.key", "key.xml", "links.key"], Keys().Select(Kind).Order(StringComparer.Ordinal));
        Assert.Equal("600\n600\n600\n", await Rights("data/keys/*"));
    }

    /// <summary>Made only when it is first needed, a key would meet the full disk that a page has to tell of.</summary>
    [Fact]
    public void Program_that_has_started_needs_to_write_no_key_any_more()
    {
        _ = _desk.Start().Services;

        Assert.Equal(["finders.key", "links.key"], Keys().Select(Kind).Where(k => k != "key.xml").Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Keys_that_others_could_read_are_closed_at_the_next_start()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Rights are kept otherwise there.");
        await Used();
        _desk.Stop();
        await _desk.Type("chmod 644 data/keys/* && chmod 755 data data/keys");

        _desk.Start();

        Assert.Equal("600\n600\n600\n700\n700\n", await Rights("data/keys/* data data/keys"));
    }

    private async Task Used()
    {
        var shop = await _desk.Start().OwnedByRuna();
        _ = (shop.Get<TagPage.Records.Outbox.LinkTokens>(), shop.Get<Web.Http.Limits.FinderMark>());
        await shop.Stranger().SignIn();
    }

    private Task<string> Rights(string files) => _desk.Type("stat -c %a " + files);

    private string[] Keys() => Directory.GetFiles(Path.Combine(_desk.Data, "keys"));

    private static string Kind(string file) => file.EndsWith(".xml", StringComparison.Ordinal) ? "key.xml" : Path.GetFileName(file);
}
