using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Stores;

public sealed class ConnectionTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("/t/{tag}")]
    [InlineData("/shop")]
    [InlineData("/shop/rackets/{racket}")]
    [InlineData("/shop/clients/{client}")]
    [InlineData("/shop/find?q=nobody")]
    [InlineData("/shop/due")]
    public async Task Page_asks_the_database_through_one_connection_and_the_next_page_through_the_same(string address)
    {
        _shop.Records.Shop();
        var family = _shop.Records.Family();
        var page = address.Replace("{tag}", $"{family.Tag}", StringComparison.Ordinal).Replace("{racket}", $"{family.Racket}", StringComparison.Ordinal)
            .Replace("{client}", $"{family.Client}", StringComparison.Ordinal);
        var owner = _shop.Owner();
        _shop.Database.Dispose();
        var before = _shop.Database.Opened;

        Assert.Equal(HttpStatusCode.OK, (await owner.Get(page)).StatusCode);
        Assert.Equal(1, _shop.Database.Opened - before);

        Assert.Equal(HttpStatusCode.OK, (await owner.Get(page)).StatusCode);
        Assert.Equal(1, _shop.Database.Opened - before);
    }
}
