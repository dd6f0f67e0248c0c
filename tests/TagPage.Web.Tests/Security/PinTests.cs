using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Dapper;
using TagPage.Records.Accounts;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>A tablet on the bench that Runa, who owns the shop, and Bram, who helps, share.</summary>
public sealed class PinTests : IAsyncLifetime
{
    private const string RunasPin = "80417", BramsPin = "2794";

    private readonly TestShop _shop = new();
    private Visitor _runa = null!, _bram = null!, _tablet = null!;

    public async ValueTask InitializeAsync()
    {
        await _shop.OwnedByRuna();
        _shop.Records.Shop();
        (_runa, _bram, _tablet) = (_shop.Stranger(), await _shop.BramAtBench(), _shop.Stranger());
        await _runa.SignIn();
        await Set(_runa, RunasPin, Runa.Password);
        await Set(_bram, BramsPin, Bram.Password);
        await _tablet.SignIn();
        await _tablet.Send(await _tablet.Open("/shop/people/tablets"), ("Input.Name", "Tablet on the bench"));
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    private static async Task<WebPage> Set(Visitor visitor, string pin, string password) =>
        await visitor.Send(await visitor.Open("/account/pin"), ("Input.Password", password), ("Input.Pin", pin));

    private async Task<WebPage> Change(Visitor visitor, string name, string pin) =>
        await visitor.Send(await visitor.Open("/account/change"), ("Input.Pin", pin), ("Input.Who", Id(name)));

    private string Id(string name) => _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT id FROM account WHERE name = @name", new { name }))!;

    private static async Task<bool> Opens(Visitor visitor, string path) => (await visitor.Get(path)).StatusCode == HttpStatusCode.OK;

    [Fact]
    public async Task Marking_a_browser_signs_its_owner_out_there()
    {
        Assert.False(await _tablet.IsSignedIn());
        Assert.True(await _runa.IsSignedIn());
        Assert.Equal(["Bram", "Runa"], (await _tablet.Open("/account/change")).Document.QuerySelectorAll("[name='Input.Who']").Select(b => b.TextContent));
    }

    [Fact]
    public async Task Pin_and_name_change_over_and_the_one_before_is_signed_out()
    {
        Assert.Equal("/shop", (await Change(_tablet, "Bram", BramsPin)).Location);
        Assert.True(await Opens(_tablet, "/shop"));
        Assert.Contains("Change person (Bram)", (await _tablet.Open("/shop")).Document.QuerySelector("nav")!.TextContent, StringComparison.Ordinal);

        await Change(_tablet, "Runa", RunasPin);

        Assert.Contains("Change person (Runa)", (await _tablet.Open("/shop")).Document.QuerySelector("nav")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("session", "way = 'Pin'"));
    }

    [Fact]
    public async Task By_pin_the_owner_too_has_the_bench_alone_until_the_full_sign_in()
    {
        await Change(_tablet, "Runa", RunasPin);
        var before = _shop.Database.Dump();

        foreach (var path in new[] { "/shop/money", "/shop/settings", "/shop/people", "/shop/people/tablets", "/account/security", "/account/password", "/account/passkeys", "/account/second-step", "/account/pin" })
            Assert.Equal(HttpStatusCode.Forbidden, (await _tablet.Get(path)).StatusCode);

        Assert.Equal(before, _shop.Database.Dump());
        Assert.Equal("/shop", (await _tablet.SignIn()).Location);
        Assert.True(await Opens(_tablet, "/shop/money"));
        Assert.Equal(0, _shop.Records.Count("session", "way = 'Pin'"));
    }

    [Fact]
    public async Task Pin_works_on_no_other_browser()
    {
        var form = await _tablet.Open("/account/change");
        var phone = _shop.Stranger();
        var page = await phone.Open("/account/change");
        Assert.Contains("not a shared one", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("Bram", page.Text, StringComparison.Ordinal);
        var token = (await phone.Open("/account/sign-in")).Document.QuerySelector("[name=__RequestVerificationToken]")!.GetAttribute("value")!;
        var before = _shop.Database.Dump();

        await phone.Send(form, ("__RequestVerificationToken", token), ("Input.Pin", BramsPin), ("Input.Who", Id("Bram")));

        Assert.False(await Opens(phone, "/shop"));
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Theory]
    [InlineData("UPDATE account SET two_factor = 1, authenticator_key = 'sealed' WHERE name = 'Bram'")]
    [InlineData("INSERT INTO passkey SELECT x'01', id, 'phone', x'', 0, '', 1, 0, 0, x'', x'', '2026-11-20T10:00:00.000Z' FROM account WHERE name = 'Bram'")]
    public async Task Helper_who_owes_a_second_step_sets_it_up_before_a_pin_works(string setUp)
    {
        await Change(_tablet, "Bram", BramsPin);
        await _runa.Send(await _runa.Open("/shop/people"), ("Input.Demanded", "true"));
        Assert.False(await Opens(_tablet, "/shop"));

        var refused = await Change(_tablet, "Bram", BramsPin);

        Assert.StartsWith("The shop wants more than a password from helpers.", Assert.Single(refused.Errors), StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("pin_try"));
        Assert.False(await Opens(_tablet, "/shop"));
        Assert.Equal("This is not the PIN. Type it again and press your name.", Assert.Single((await Change(_tablet, "Bram", "1111")).Errors));
        _shop.Records.Change(setUp);
        await Change(_tablet, "Bram", BramsPin);
        Assert.True(await Opens(_tablet, "/shop"));
    }

    [Fact]
    public async Task Wrong_pins_are_slowed_down_then_locked_until_the_full_sign_in_there()
    {
        Assert.Equal("This is not the PIN. Type it again and press your name.", Assert.Single((await Change(_tablet, "Bram", "1111")).Errors));
        await Change(_tablet, "Bram", "1111");
        Assert.Equal("Wait 5 seconds, then try again.", Assert.Single((await Change(_tablet, "Bram", BramsPin)).Errors));
        for (var n = 0; n < 3; n++)
        {
            _shop.Clock.Advance(TimeSpan.FromMinutes(1));
            await Change(_tablet, "Bram", "1111");
        }
        _shop.Clock.Advance(TimeSpan.FromMinutes(10));

        Assert.StartsWith("Too many wrong PINs.", Assert.Single((await Change(_tablet, "Bram", BramsPin)).Errors), StringComparison.Ordinal);
        Assert.False(await Opens(_tablet, "/shop"));
        await _tablet.SignIn(Bram.Name, Bram.Password);
        Assert.Equal("/shop", (await Change(_tablet, "Bram", BramsPin)).Location);
    }

    [Fact]
    public async Task Browser_that_is_no_longer_shared_takes_no_pin_and_signs_out()
    {
        await Change(_tablet, "Bram", BramsPin);

        await _runa.Send(await _runa.Open("/shop/people/tablets"));

        Assert.False(await Opens(_tablet, "/shop"));
        Assert.Contains("not a shared one", (await _tablet.Open("/account/change")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pin_makes_no_browser_a_known_one()
    {
        var form = await _tablet.Open("/account/change");
        var answer = await _tablet.Post(form, form.Document.QuerySelector<IHtmlFormElement>("main form")!, ("Input.Pin", BramsPin), ("Input.Who", Id("Bram")));

        Assert.DoesNotContain(answer.Response.Headers.GetValues("Set-Cookie"), cookie => cookie.Contains("device", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Pin_is_set_with_the_password_alone_and_kept_as_a_hash()
    {
        var before = Hash();
        Assert.Equal("This is not the password you sign in with.", Assert.Single((await Set(_bram, "5830", "three loose planks humming?")).Errors));
        Assert.Equal(before, Hash());
        Assert.DoesNotContain(BramsPin, before, StringComparison.Ordinal);
        Assert.Equal("/account/security", (await Set(_bram, "5830", Bram.Password)).Location);
        Assert.NotEqual(before, Hash());
    }

    private string Hash() => _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT pin_hash FROM account WHERE name = 'Bram'"))!;

    [Fact]
    public async Task Removed_pin_signs_out_whoever_changed_over_with_it()
    {
        await Change(_tablet, "Bram", BramsPin);
        var page = await _bram.Open("/account/pin");

        await _bram.Send(page, page.Document.QuerySelector<IHtmlFormElement>("form[action$='handler=Remove']")!);

        Assert.False(await Opens(_tablet, "/shop"));
        Assert.False(_shop.Get<PinStore>().Has(Id("Bram")));
    }

    [Theory]
    [InlineData("123", "Enter 4 to 8 digits.")]
    [InlineData("123456789", "Enter 4 to 8 digits.")]
    [InlineData("12a4", "Enter 4 to 8 digits.")]
    [InlineData("7777", "This PIN is easy to guess. Do not use the same digit throughout, or digits in a row.")]
    [InlineData("3456", "This PIN is easy to guess. Do not use the same digit throughout, or digits in a row.")]
    [InlineData("8765", "This PIN is easy to guess. Do not use the same digit throughout, or digits in a row.")]
    [InlineData("1357", null)]
    public void Pin_that_is_short_or_easy_is_refused(string pin, string? sentence) => Assert.Equal(sentence, Pins.WrongWith(pin));
}
