using System.Net;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Security;

namespace TagPage.Web.Tests.Events;

/// <summary>What a helper's tablet opens: the desk of its event, and nothing else.</summary>
public sealed class HelperAccessTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Fairground _fair;

    public HelperAccessTests()
    {
        _fair = new Fairground(_shop);
        _fair.TakeIn();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Helper_gets_past_none_of_the_owners_other_doors_and_nothing_changes()
    {
        var tablet = await _fair.Tablet();
        var before = _shop.Database.Dump();

        foreach (var door in Door.Listed.Where(d => d.ForShop && !d.Route.StartsWith("/desk/", StringComparison.Ordinal)))
        {
            var answer = await tablet.Get(door.Address("7K2M9Q4TXAV"));
            Assert.True(answer.StatusCode == HttpStatusCode.Found, $"{door.Route}: {answer.StatusCode}");
            Assert.StartsWith("/account/sign-in", answer.Headers.Location?.ToString(), StringComparison.Ordinal);
        }
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Helper_gets_through_every_door_of_their_desk()
    {
        var tablet = await _fair.Tablet();

        foreach (var door in Door.Listed.Where(d => d.ForShop && d.Route.StartsWith("/desk/", StringComparison.Ordinal) && !d.Route.EndsWith("/live", StringComparison.Ordinal)))
        {
            var answer = await tablet.Get(door.Address("7K2M9Q4TXAV"));
            Assert.True((int)answer.StatusCode < 500, $"{door.Route}: {answer.StatusCode}");
            Assert.False(answer.Headers.Location?.ToString().StartsWith("/account/sign-in", StringComparison.Ordinal) == true, door.Route);
        }
    }

    [Fact]
    public async Task Another_events_desk_is_not_there_for_them()
    {
        var other = new Fairground(_shop);
        other.TakeIn("Edda Brink");
        var tablet = await _fair.Tablet();
        var before = _shop.Database.Dump();

        foreach (var path in new[] { "", "/board", "/in", "/out", "/sheet", "/shift", "/entry/1", "/live", $"/technician/{other.Runa}", "/in/visitor" })
            Assert.Equal(HttpStatusCode.NotFound, (await tablet.Get(other.Home + path)).StatusCode);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Looking_at_the_link_signs_nobody_in()
    {
        var before = _shop.Database.Dump();
        var passerBy = _shop.Stranger();
        for (var look = 0; look < 3; look++)
            await passerBy.Get(_fair.Link);

        Assert.Equal(before, _shop.Database.Dump());
        Assert.Equal(HttpStatusCode.Found, (await passerBy.Get(_fair.Home)).StatusCode);
    }

    [Fact]
    public async Task Signed_out_tablets_and_the_old_square_open_nothing()
    {
        var (tablet, link) = (await _fair.Tablet(), _fair.Link);
        Fairground.Done(_shop.Get<EventStore>().SignHelpersOut(Who.Shop, _fair.Id));

        Assert.Equal(HttpStatusCode.Found, (await tablet.Get(_fair.Home)).StatusCode);
        Assert.Null((await tablet.Open(link)).Form());
    }

    [Fact]
    public async Task Tablet_that_leaves_is_signed_out()
    {
        var tablet = await _fair.Tablet();
        await tablet.Send(await tablet.Open("/desk/leave"));

        Assert.Equal(0, _shop.Records.Count("event_session"));
        Assert.Equal(HttpStatusCode.Found, (await tablet.Get(_fair.Home)).StatusCode);
    }
}
