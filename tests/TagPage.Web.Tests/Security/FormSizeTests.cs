using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>On the real server, since the test server takes bodies of any size.</summary>
public sealed class FormSizeTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData(1_000_000, HttpStatusCode.BadRequest)]
    [InlineData(2_000_000, HttpStatusCode.RequestEntityTooLarge)]
    public async Task Form_of_more_than_a_megabyte_is_refused_unread(int bytes, HttpStatusCode status)
    {
        _shop.UseKestrel(0);
        _shop.StartServer();
        var owner = _shop.Owner();
        owner.Client.BaseAddress = _shop.ClientOptions.BaseAddress;
        owner.Client.DefaultRequestHeaders.Add(TestSource.Header, "127.0.0.1");
        owner.Client.DefaultRequestHeaders.Add("X-Forwarded-Proto", "https");
        using var form = new FormUrlEncodedContent([new("Input.Note", new string('n', bytes))]);

        var answer = await WebPage.Of(await owner.Client.PostAsync(new Uri("/shop/strings/new", UriKind.Relative), form, TestContext.Current.CancellationToken), "");

        Assert.Equal(status, answer.Status);
        if (status == HttpStatusCode.RequestEntityTooLarge)
            Assert.Contains("That is too much at once", answer.Main, StringComparison.Ordinal);
    }
}
