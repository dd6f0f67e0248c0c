using System.Net;
using TagPage.Core.Strings;
using TagPage.Records.Jobs;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class InstrumentTests : IDisposable
{
    private readonly TestShop _shop = new();

    private InstrumentStore Store => _shop.Get<InstrumentStore>();

    public void Dispose() => _shop.Dispose();

    private static async Task<WebPage> Add(Visitor owner, string name, string scale = "Stiffness") =>
        await owner.Send(await owner.Open("/shop/settings/instruments/new"), ("Input.Name", name), ("Input.Scale", scale));

    [Fact]
    public async Task Owner_adds_and_renames_an_instrument()
    {
        var owner = _shop.Owner();
        await Add(owner, "bench gauge");

        await owner.Send(await owner.Open("/shop/settings/instruments/edit/1"), ("Input.Name", "the old gauge"));

        Assert.Equal("the old gauge", Assert.Single(Store.List()).Name);
    }

    [Fact]
    public async Task Form_sent_twice_makes_one_instrument_and_a_taken_name_is_refused()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/settings/instruments/new");
        await owner.Send(form, ("Input.Name", "bench gauge"), ("Input.Scale", "Stiffness"));
        var again = await owner.Send(form, ("Input.Name", "bench gauge"), ("Input.Scale", "Stiffness"));

        var taken = await Add(owner, "Bench Gauge");

        Assert.Equal("/shop/settings/instruments", again.Location);
        Assert.Equal("There is already an instrument with this name. Choose another name.", Assert.Single(taken.Errors));
        Assert.Single(Store.List());
    }

    [Fact]
    public async Task Scale_is_fixed_once_a_reading_was_taken()
    {
        var owner = _shop.Owner();
        await Add(owner, "bench gauge");
        await owner.Send(await owner.Open("/shop/settings/instruments/edit/1"), ("Input.Scale", "Hertz"));
        Assert.Equal(ReadingScale.Hertz, Store.Get(1)!.Scale);
        var job = _shop.Records.Job(_shop.Records.Family().Racket);
        _shop.Get<MoveStore>().MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = TestShop.Today, Reading = 588, InstrumentId = 1 });

        var refused = await owner.Send(await owner.Open("/shop/settings/instruments/edit/1"), ("Input.Scale", "Stiffness"));

        Assert.Contains("This instrument already has readings", Assert.Single(refused.Errors), StringComparison.Ordinal);
        Assert.Equal(ReadingScale.Hertz, Store.Get(1)!.Scale);
    }

    [Fact]
    public async Task Unknown_instrument_is_not_found() =>
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get("/shop/settings/instruments/edit/9")).StatusCode);
}
