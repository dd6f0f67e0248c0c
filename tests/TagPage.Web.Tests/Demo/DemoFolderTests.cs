using TagPage.Records.Demo;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Demo;

/// <summary>Starting the demo over deletes a demo, and nothing else ever.</summary>
public sealed class DemoFolderTests : IDisposable
{
    private readonly OwnersDesk _desk = new();

    public DemoFolderTests()
    {
        var shop = _desk.Start();
        shop.Records.Shop();
        shop.Records.Family();
        _ = shop.Get<TagPage.Records.Outbox.LinkTokens>();
    }

    public void Dispose() => _desk.Dispose();

    [Fact]
    public async Task Demo_is_deleted_and_the_folder_takes_a_new_one()
    {
        _desk.Start().Records.Change("INSERT INTO demo (id, day) VALUES (1, '2026-11-25')");
        _desk.Stop();

        DemoFolder.Clear(new DataFolder(_desk.Data));

        Assert.Equal("tagpage.lock empty", Assert.Single(_desk.Files()));
        Assert.Equal(0, (await _desk.Ask("set-up-link")).Code);
    }

    [Fact]
    public void Shops_records_are_left_as_they_are()
    {
        _desk.Stop();
        var before = _desk.Files();

        var refusal = Assert.Throws<CannotStartException>(() => DemoFolder.Clear(new DataFolder(_desk.Data)));

        Assert.Contains("are not the demo’s", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, _desk.Files());
    }

    [Fact]
    public void Demo_that_runs_is_left_as_it_is()
    {
        _desk.Start().Records.Change("INSERT INTO demo (id, day) VALUES (1, '2026-11-25')");

        Assert.Throws<CannotStartException>(() => DemoFolder.Clear(new DataFolder(_desk.Data)));

        Assert.Equal(1, _desk.Start().Records.Count("demo"));
    }

    [Fact]
    public void What_is_no_database_is_left_as_it_is()
    {
        _desk.Stop();
        File.WriteAllText(_desk.Database, "Dear diary");

        Assert.Throws<CannotStartException>(() => DemoFolder.Clear(new DataFolder(_desk.Data)));

        Assert.Equal("Dear diary", File.ReadAllText(_desk.Database));
    }
}
