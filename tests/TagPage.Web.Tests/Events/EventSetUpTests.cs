using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>An event as its owner sets it up and ends it.</summary>
public sealed class EventSetUpTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_sets_an_event_up_and_a_helper_joins_by_the_square()
    {
        _shop.Records.Shop();
        var runa = _shop.Owner();
        var made = await runa.Send(await runa.Open("/shop/events/new"), ("Input.Name", "Harbour Open"), ("Input.PriceOwn", "12"));
        var page = await runa.Open(made.Location!);
        await runa.Send(page, ("Input.Name", "Runa"), ("Input.Machine", "Table"), ("Input.Hours", "9-12, 13-19"));

        page = await runa.Open(made.Location!);
        Assert.Contains("9:00–12:00, 13:00–19:00", page.Main, StringComparison.Ordinal);
        Assert.NotNull(page.Document.QuerySelector("svg[aria-label='QR code that joins the desk']"));

        var desk = _shop.Get<EventStore>().Get(Who.Shop, 1)!;
        var tablet = _shop.Stranger();
        var joined = await tablet.Send(await tablet.Open("/desk/enter/" + _shop.Get<EventSessionStore>().Token(desk)));
        Assert.Contains("Harbour Open", (await tablet.Open(joined.Location!)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Technicians_hours_until_midnight_can_be_saved_as_they_are_shown()
    {
        var fair = new Fairground(_shop);
        var runa = _shop.Owner();
        var address = $"/shop/events/{fair.Id}/technician/{fair.Runa}";
        await runa.Send(await runa.Open(address), ("Input.Hours", "0-24"));

        var saved = await runa.Send(await runa.Open(address));

        Assert.Empty(saved.Errors);
        Assert.Equal(24, fair.Board.Technician(fair.Runa)!.Hours.Sum(time => (time.To - time.From).TotalHours));
    }

    [Fact]
    public async Task Day_of_the_event_on_which_somebody_strings_at_other_hours_is_said_on_its_own()
    {
        _shop.Records.Shop();
        var runa = _shop.Owner();
        var made = await runa.Send(await runa.Open("/shop/events/new"), ("Input.Name", "Island Cup"), ("Input.ToOn", "2026-11-26"));
        var asked = await runa.Send(await runa.Open(made.Location!), ("Input.Name", "Runa"), ("Input.Hours", "9-17"), ("Input.Days[1].Hours", "noon"));
        Assert.Contains("Enter times like 9:00-12:30, 13:00-18:00, or off for a day off.", asked.Errors);

        await runa.Send(asked, ("Input.Days[1].Hours", "12-20"));
        Assert.Contains("25 Nov 2026 9:00–17:00", (await runa.Open(made.Location!)).Main, StringComparison.Ordinal);
        var form = await runa.Open(made.Location + "/technician/1");
        await runa.Send(form);
        var saved = (await runa.Open(made.Location!)).Main;
        Assert.Contains("26 Nov 2026 12:00–20:00", saved, StringComparison.Ordinal);
        await runa.Send(form, ("Input.Days[1].Hours", "off"));
        Assert.Contains("26 Nov 2026 off", (await runa.Open(made.Location!)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Closed_event_is_gone_from_the_tablet_and_stays_with_the_owner()
    {
        var fair = new Fairground(_shop);
        var tablet = await fair.Tablet();
        var runa = _shop.Owner();
        await Fairground.Press(runa, await runa.Open($"/shop/events/{fair.Id}"), "Close the event");

        Assert.StartsWith("/account/sign-in", (await tablet.Get(fair.Home)).Headers.Location?.ToString(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await runa.Get(fair.Home)).StatusCode);
    }

    [Fact]
    public async Task Event_with_a_racket_at_its_desk_is_not_closed_and_its_page_takes_a_technician_all_the_same()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn();
        var runa = _shop.Owner();

        var told = await Fairground.Press(runa, await runa.Open($"/shop/events/{fair.Id}"), "Close the event");
        Assert.Contains("Still at the desk: 1.", told.Main, StringComparison.Ordinal);
        Assert.Equal("9:00-12:30, 13:00-18:00", told.Document.QuerySelector<IHtmlInputElement>("[name='Input.Hours']")!.Value);
        var added = await runa.Send(told, ("Input.Name", "Edda"));

        Assert.Empty(added.Errors);
        Assert.Equal(["Runa", "Bram", "Edda"], fair.Board.Technicians.Select(technician => technician.Name));
    }
}
