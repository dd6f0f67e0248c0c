using TagPage.Records.Clients;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class PayerTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Academy_pays_for_a_client()
    {
        var client = _shop.Records.Client("Odalys Ferran");
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/payers/new"), ("Input.Name", "Larkmoor Academy"), ("Input.Phone", "020 7946 0182"));

        await owner.Send(await owner.Open($"/shop/clients/edit/{client}"), ("Input.PayerId", "1"));

        Assert.Equal(1, _shop.Get<ClientStore>().Get(client)!.PayerId);
        var payer = Assert.Single(_shop.Get<PayerStore>().List());
        Assert.Equal(("Larkmoor Academy", "+442079460182", 1), (payer.Name, payer.Phone, payer.Clients));
    }

    [Fact]
    public async Task Payer_is_changed()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/payers/new"), ("Input.Name", "Larkmoor"), ("Input.Phone", "020 7946 0182"));

        await owner.Send(await owner.Open("/shop/payers/edit/1"), ("Input.Name", "Larkmoor Academy"));

        var payer = _shop.Get<PayerStore>().Get(1)!;
        Assert.Equal(("Larkmoor Academy", "+442079460182"), (payer.Name, payer.Phone));
    }
}
