using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Mail;

/// <summary>Nobody's address is held for refused because the shop may not send there.</summary>
public sealed class RefusedRecipientTests : IAsyncDisposable
{
    private readonly MoodyServer _server = new();
    private readonly TestShop _shop;

    public RefusedRecipientTests() => _shop = MailShop.Of(_server.Port);

    public async ValueTask DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _server.DisposeAsync();
    }

    [Theory]
    [InlineData("550 5.1.1 No such user", 1)]
    [InlineData("550 5.7.1 Relaying denied", 0)]
    public async Task Address_is_refused_where_nobody_has_it_and_not_where_the_shop_is_set_up_wrong(string said, int refused)
    {
        _server.SaysAt(MoodyServer.Rcpt, () => Task.FromResult<string?>(said));
        _shop.Queue();

        await _shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);

        Assert.Equal(("Failed", refused), (_shop.MailStates(), _shop.Records.Count("client", "mail_refused IS NOT NULL")));
    }
}
