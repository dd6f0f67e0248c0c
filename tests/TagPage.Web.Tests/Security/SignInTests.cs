using System.Buffers.Binary;
using System.Net;
using Dapper;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

public sealed class SignInTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();

    public async ValueTask InitializeAsync() => await _shop.OwnedByRuna();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Owner_signs_in_through_the_form_and_is_taken_where_she_wanted()
    {
        var runa = _shop.Stranger();
        var sentAway = await runa.Get("/shop/strings");
        Assert.Equal("/account/sign-in?returnUrl=%2Fshop%2Fstrings", sentAway.Headers.Location?.ToString());

        var form = await runa.Open(sentAway.Headers.Location!.ToString());
        var answer = await runa.Send(form, ("Input.Name", "runa"), ("Input.Password", Runa.Password));

        Assert.Equal("/shop/strings", answer.Location);
        Assert.True(await runa.IsSignedIn());
    }

    [Theory]
    [InlineData("https://evil.example/")]
    [InlineData("//evil.example/")]
    [InlineData("/\\evil.example")]
    [InlineData("javascript:alert(1)")]
    [InlineData("")]
    public async Task Return_address_leads_nowhere_but_into_the_shop(string returnUrl)
    {
        var answer = await _shop.Stranger().SignIn(returnUrl: returnUrl);

        Assert.Equal("/shop", answer.Location);
    }

    [Fact]
    public async Task Wrong_password_and_unknown_name_get_the_same_answer()
    {
        var wrong = await _shop.Stranger().SignIn(password: "three grey herons walking");
        var unknown = await _shop.Stranger().SignIn(name: "Odalys");

        Assert.Equal(HttpStatusCode.OK, wrong.Status);
        Assert.Equal(wrong.Status, unknown.Status);
        Assert.Equal(wrong.Main, unknown.Main);
        Assert.Contains("This name and password do not match.", wrong.Main, StringComparison.Ordinal);
        Assert.False(wrong.Response.Headers.TryGetValues("Set-Cookie", out _));
        Assert.DoesNotContain("herons", wrong.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cookies_are_bound_to_the_host_and_out_of_reach_of_scripts()
    {
        var answer = await _shop.Stranger().SignIn();

        var cookies = answer.Response.Headers.GetValues("Set-Cookie").ToList();
        Assert.Equal(["__Host-device", "__Host-owner"], cookies.Select(c => c.Split('=')[0]).Order(StringComparer.Ordinal));
        Assert.All(cookies, c =>
        {
            Assert.Contains("; secure", c, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("; httponly", c, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("; samesite=lax", c, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("; path=/", c, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("domain=", c, StringComparison.OrdinalIgnoreCase);
        });
    }

    [Fact]
    public async Task Old_cookie_is_dead_after_signing_out_and_the_other_browser_stays_signed_in()
    {
        var (tablet, phone) = (_shop.Stranger(), _shop.Stranger());
        await phone.SignIn();
        var thief = CookieThief(await tablet.SignIn());
        Assert.True(await thief.IsSignedIn());

        var page = await tablet.Open("/shop/strings");
        var signedOut = await tablet.Send(page, (AngleSharp.Html.Dom.IHtmlFormElement)page.Document.QuerySelector("form[action='/account/sign-out']")!);

        Assert.Equal("/", signedOut.Location);
        Assert.False(await tablet.IsSignedIn());
        Assert.False(await thief.IsSignedIn());
        Assert.True(await phone.IsSignedIn());
    }

    [Fact]
    public async Task Idle_browser_is_signed_out_after_14_days()
    {
        var runa = _shop.Stranger();
        await runa.SignIn();

        _shop.Clock.Advance(TimeSpan.FromDays(13));
        Assert.True(await runa.IsSignedIn());
        _shop.Clock.Advance(TimeSpan.FromDays(13));
        Assert.True(await runa.IsSignedIn());
        _shop.Clock.Advance(TimeSpan.FromDays(14) + TimeSpan.FromSeconds(1));
        Assert.False(await runa.IsSignedIn());
    }

    [Fact]
    public async Task Busy_browser_is_signed_out_after_90_days()
    {
        var runa = _shop.Stranger();
        await runa.SignIn();
        for (var day = 0; day < 89; day++)
        {
            _shop.Clock.Advance(TimeSpan.FromDays(1));
            await runa.Get("/shop/strings");
        }
        Assert.True(await runa.IsSignedIn());

        _shop.Clock.Advance(TimeSpan.FromDays(1));

        Assert.False(await runa.IsSignedIn());
    }

    // Layout of Identity's hash format 3, from ASP.NET Core's documentation: 01, PRF (2 = HMAC-SHA512), rounds, salt length, salt, key.
    [Fact]
    public async Task Program_hashes_with_at_least_600_000_rounds()
    {
        using var shop = new TestShop { HashRounds = null };
        await shop.OwnedByRuna();

        var hash = Convert.FromBase64String(shop.Database.Read(c => c.ExecuteScalar<string>("SELECT password_hash FROM account"))!);

        Assert.Equal(1, hash[0]);
        Assert.Equal(2u, BinaryPrimitives.ReadUInt32BigEndian(hash.AsSpan(1)));
        Assert.True(BinaryPrimitives.ReadUInt32BigEndian(hash.AsSpan(5)) >= 600_000);
    }

    private Visitor CookieThief(WebPage signedIn)
    {
        var cookie = signedIn.Response.Headers.GetValues("Set-Cookie").Single(c => c.StartsWith("__Host-owner", StringComparison.Ordinal)).Split(';')[0];
        var client = _shop.House.CreateClient(new() { AllowAutoRedirect = false, HandleCookies = false, BaseAddress = new Uri("https://localhost") });
        client.DefaultRequestHeaders.Add("Cookie", cookie);
        return new Visitor(client);
    }
}
