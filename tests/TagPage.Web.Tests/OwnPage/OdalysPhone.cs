using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>A shop with Odalys and her Pim, whose racket she has on her phone.</summary>
public abstract class OdalysPhone : IAsyncLifetime
{
    protected TestShop Shop { get; } = new();

    protected Visitor Phone { get; private set; } = null!;

    protected long Racket { get; private set; }

    public async ValueTask InitializeAsync()
    {
        Shop.Records.Shop();
        var (odalys, _, racket, _, _) = Shop.Records.Family();
        Racket = racket;
        Phone = await Shop.OnOwnPage(odalys);
    }

    public async ValueTask DisposeAsync()
    {
        await Shop.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    protected Task<WebPage> OpenRacket() => Phone.Open($"/my/rackets/{Racket}");
}
