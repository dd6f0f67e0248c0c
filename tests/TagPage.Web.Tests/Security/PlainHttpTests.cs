using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>A first try over plain http works on the machine itself; on a network only the public pages do.</summary>
public sealed class PlainHttpTests : IAsyncLifetime
{
    private const string Loopback = "127.0.0.1";
    private const string Phone = "192.168.1.20";

    private readonly TestShop _shop = new();

    public PlainHttpTests() => _shop.Settings.Remove("TagPage:Address");

    public async ValueTask InitializeAsync() => await _shop.OwnedByRuna();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Theory]
    [InlineData(Loopback, "http://localhost:5080")]
    [InlineData(Loopback, "http://127.0.0.1:5080")]
    [InlineData("::1", "http://[::1]:5080")]
    public async Task On_the_machine_itself_the_owner_signs_in_with_cookies_of_plain_names(string source, string at)
    {
        var runa = _shop.Stranger(source, at);

        var answer = await runa.SignIn();

        Assert.Equal("/shop", answer.Location);
        Assert.True(await runa.IsSignedIn());
        Assert.All(answer.Response.Headers.GetValues("Set-Cookie"), c =>
        {
            Assert.DoesNotContain("__Host-", c, StringComparison.Ordinal);
            Assert.Contains("; httponly", c, StringComparison.OrdinalIgnoreCase);
        });
        Assert.False(answer.Response.Headers.Contains("Strict-Transport-Security"));
    }

    [Theory]
    [InlineData(Phone, "http://192.168.1.5:5080", "/account/sign-in")]
    [InlineData(Phone, "http://192.168.1.5:5080", "/shop")]
    [InlineData(Phone, "http://192.168.1.5:5080", "/SHOP/strings")]
    [InlineData(Phone, "http://192.168.1.5:5080", "/account/set-up/token")]
    [InlineData(Phone, "http://localhost:5080", "/shop")]
    [InlineData(Loopback, "http://192.168.1.5:5080", "/shop")]
    [InlineData(Loopback, "http://localhost.evil.example", "/shop")]
    public async Task On_a_network_the_signed_in_areas_say_that_they_need_https_and_set_nothing(string source, string at, string address)
    {
        var answer = await _shop.Stranger(source, at).Open(address);

        Assert.Equal(HttpStatusCode.Forbidden, answer.Status);
        Assert.Contains("This page needs https", answer.Main, StringComparison.Ordinal);
        Assert.False(answer.Response.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task Password_sent_over_a_network_is_not_even_looked_at()
    {
        using var content = new FormUrlEncodedContent([new("Input.Name", Runa.Name), new("Input.Password", Runa.Password)]);
        var answer = await _shop.Stranger(Phone, "http://192.168.1.5:5080").Client
            .PostAsync(new Uri("/account/sign-in", UriKind.Relative), content, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain(_shop.Log.All, l => l.Contains("Sign-in", StringComparison.Ordinal) || l.Contains("Signed in", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Public_pages_work_on_a_network()
    {
        var tag = _shop.Records.Family().Tag;
        var phone = _shop.Stranger(Phone, "http://192.168.1.5:5080");

        foreach (var address in new[] { "/", "/t", $"/t/{tag}", "/healthz/live" })
            Assert.Equal(HttpStatusCode.OK, (await phone.Get(address)).StatusCode);
    }

    [Fact]
    public async Task Proxy_on_this_machine_is_believed_about_https_and_about_plain_http()
    {
        var secure = _shop.Stranger(Loopback, "http://localhost:5080");
        secure.Client.DefaultRequestHeaders.Add("X-Forwarded-For", "203.0.113.9");
        secure.Client.DefaultRequestHeaders.Add("X-Forwarded-Proto", "https");
        var open = _shop.Stranger(Loopback, "http://localhost:5080");
        open.Client.DefaultRequestHeaders.Add("X-Forwarded-For", "203.0.113.9");
        open.Client.DefaultRequestHeaders.Add("X-Forwarded-Proto", "http");

        Assert.Equal(HttpStatusCode.OK, (await secure.Get("/account/sign-in")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await open.Get("/account/sign-in")).StatusCode);
    }

    [Fact]
    public async Task Nobody_else_is_believed_about_https_unless_the_settings_name_them()
    {
        var mallory = _shop.Stranger("10.0.0.2", "http://tag.example");
        mallory.Client.DefaultRequestHeaders.Add("X-Forwarded-Proto", "https");
        mallory.Client.DefaultRequestHeaders.Add("X-Forwarded-For", Loopback);
        Assert.Equal(HttpStatusCode.Forbidden, (await mallory.Get("/account/sign-in")).StatusCode);

        await using var behindProxy = new TestShop { Settings = { ["TagPage:Proxies"] = "192.0.2.1, 10.0.0.0/24" } };
        var runa = behindProxy.Stranger("10.0.0.2", "http://tag.example");
        runa.Client.DefaultRequestHeaders.Add("X-Forwarded-Proto", "https");
        runa.Client.DefaultRequestHeaders.Add("X-Forwarded-For", "203.0.113.9");
        Assert.Equal(HttpStatusCode.OK, (await runa.Get("/account/sign-in")).StatusCode);
    }

    [Fact]
    public async Task Shop_with_an_https_address_names_it_even_on_its_own_machine()
    {
        await using var published = new TestShop();

        var answer = await published.Stranger(Loopback, "http://localhost:5080").Open("/account/sign-in");

        Assert.Equal(HttpStatusCode.Forbidden, answer.Status);
        Assert.Contains("Open it at https://tag.example", answer.Main, StringComparison.Ordinal);
    }
}
