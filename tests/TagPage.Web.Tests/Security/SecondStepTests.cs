using System.Net;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Dapper;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>Runa signs in with a code after the password.</summary>
public sealed partial class SecondStepTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private readonly Visitor _desk;
    private byte[] _key = [];
    private string _written = "";

    public SecondStepTests() => _desk = _shop.Stranger();

    public async ValueTask InitializeAsync()
    {
        await _shop.OwnedByRuna();
        await _desk.SignIn();
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task App_is_set_up_with_a_first_code_and_asked_for_after_the_password()
    {
        var older = _shop.Stranger();
        await older.SignIn();

        var shown = await SetUp();
        var codes = Recovery(shown);

        Assert.DoesNotContain("again=", shown.Path, StringComparison.Ordinal);
        Assert.Equal(10, codes.Distinct().Count());
        Assert.True(await _desk.IsSignedIn());
        Assert.False(await older.IsSignedIn());
        Assert.DoesNotContain(codes[0], (await _desk.Open("/account/second-step")).Text, StringComparison.Ordinal);
        var dump = _shop.Database.Dump();
        Assert.All(codes.Append(_written), secret => Assert.DoesNotContain(secret, dump, StringComparison.Ordinal));

        var phone = _shop.Stranger();
        var half = await phone.SignIn(returnUrl: "/shop/strings");
        Assert.Equal("/account/code?returnUrl=%2Fshop%2Fstrings", half.Location);
        Assert.False(await phone.IsSignedIn());
        Assert.Equal("/shop/strings", (await Enter(phone, half, Code(1))).Location);
        Assert.True(await phone.IsSignedIn());
    }

    [Fact]
    public async Task Without_the_password_no_code_is_asked_for_and_without_a_good_code_nobody_is_in()
    {
        await SetUp();
        var thief = _shop.Stranger();
        Assert.Null((await thief.Open("/account/code")).Form());

        var half = await thief.SignIn();
        foreach (var wrong in (string[])["000000", "", "12345", Code(-3), Code(3), "BBBBB-BBBBB"])
            Assert.NotEmpty((await Enter(thief, half, wrong)).Errors);
        Assert.False(await thief.IsSignedIn());

        _shop.Clock.Advance(TimeSpan.FromMinutes(10));
        Assert.Null((await thief.Open("/account/code")).Form());
    }

    [Fact]
    public async Task Code_that_somebody_looked_over_the_shoulder_at_works_no_second_time()
    {
        await SetUp();
        var (phone, thief) = (_shop.Stranger(), _shop.Stranger());
        var (mine, theirs) = (await phone.SignIn(), await thief.SignIn());

        Assert.Equal("/shop", (await Enter(phone, mine, Code(1))).Location);

        Assert.NotEmpty((await Enter(thief, theirs, Code(1))).Errors);
        Assert.False(await thief.IsSignedIn());
    }

    [Fact]
    public async Task Recovery_code_signs_in_once_however_it_is_typed_and_new_ones_void_the_old()
    {
        var codes = Recovery(await SetUp());
        var phone = _shop.Stranger();
        Assert.Equal("/shop", (await Enter(phone, await phone.SignIn(), codes[3].ToLowerInvariant().Replace("-", " ", StringComparison.Ordinal))).Location);
        Assert.Contains("9 recovery codes are left", (await phone.Open("/account/security")).Main, StringComparison.Ordinal);

        var thief = _shop.Stranger();
        Assert.NotEmpty((await Enter(thief, await thief.SignIn(), codes[3])).Errors);

        var fresh = Recovery(await Press("?handler=recovery"));
        Assert.Empty(fresh.Intersect(codes));
        Assert.NotEmpty((await Enter(thief, await thief.SignIn(), codes[4])).Errors);
        Assert.Equal("/shop", (await Enter(thief, await thief.SignIn(), fresh[4])).Location);
    }

    [Fact]
    public async Task Codes_run_out_for_strangers_and_not_for_a_browser_that_was_there_before()
    {
        await SetUp();
        var thief = _shop.Stranger();
        var half = await thief.SignIn();
        var form = await thief.Open(half.Location!);
        for (var n = 0; n < 20; n++)
            await thief.Send(form, ("Input.Code", "000000"));

        Assert.Equal(HttpStatusCode.TooManyRequests, (await thief.Send(form, ("Input.Code", Code(1)))).Status);

        Assert.False(await thief.IsSignedIn());
        Assert.Equal("/shop", (await Enter(_desk, await AgainAt(_desk), Code(1))).Location);
    }

    [Fact]
    public async Task Code_that_set_the_app_up_signs_nobody_in()
    {
        await SetUp();
        var thief = _shop.Stranger();

        Assert.NotEmpty((await Enter(thief, await thief.SignIn(), Code(0))).Errors);

        Assert.False(await thief.IsSignedIn());
    }

    /// <summary>A thief with the password waits for the owner to come and go, to try on.</summary>
    [Fact]
    public async Task Owner_who_signs_in_gives_a_stranger_no_new_tries()
    {
        var codes = Recovery(await SetUp());
        var thief = _shop.Stranger();
        var form = await thief.Open((await thief.SignIn()).Location!);
        for (var n = 0; n < 19; n++)
            await thief.Send(form, ("Input.Code", "000000"));

        Assert.Equal("/shop", (await Enter(_desk, await AgainAt(_desk), Code(1))).Location);
        var phone = _shop.Stranger();
        Assert.Equal("/shop", (await Enter(phone, await phone.SignIn(), codes[0])).Location);

        Assert.Equal(HttpStatusCode.OK, (await thief.Send(form, ("Input.Code", "000000"))).Status);
        Assert.Equal(HttpStatusCode.TooManyRequests, (await thief.Send(form, ("Input.Code", "000000"))).Status);
    }

    [Fact]
    public async Task Setting_up_and_stopping_take_the_password()
    {
        var page = await _desk.Open("/account/second-step");
        Assert.NotEmpty((await _desk.Send(page, ("Input.Password", "three grey herons walking"))).Errors);
        await SetUp();
        var before = AccountRow();

        foreach (var handler in (string[])["?handler=off", "?handler=recovery"])
            Assert.NotEmpty((await Press(handler, "three grey herons walking")).Errors);
        Assert.Equal(before, AccountRow());

        Assert.Equal("/account/security", (await Press("?handler=off")).Location);
        Assert.True(await _desk.IsSignedIn());
        Assert.Equal("/shop", (await _shop.Stranger().SignIn()).Location);
    }

    [Fact]
    public async Task Wrong_first_code_switches_nothing_on()
    {
        var asked = await _desk.Send(await _desk.Open("/account/second-step"), ("Input.Password", Runa.Password));

        var answer = await _desk.Send(asked, ("Input.Code", "000000"));

        Assert.Contains("This is not the code for this key.", Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal("/shop", (await _shop.Stranger().SignIn()).Location);
    }

    [Fact]
    public async Task New_browser_is_told_to_the_shop_and_one_that_was_there_before_is_not()
    {
        _shop.Records.Shop();
        await AgainAt(_desk);
        Assert.Equal(0, _shop.Records.Count("outbox"));

        await _shop.Stranger().SignIn();

        var body = _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT subject || body FROM outbox"))!;
        Assert.Contains("A new browser signed in", body, StringComparison.Ordinal);
        Assert.Contains("https://tag.example/account/security", body, StringComparison.Ordinal);
        Assert.Contains("25 Nov 2026, 10:00", body, StringComparison.Ordinal);
    }

    /// <summary>Who knew the old password may know the new one, too.</summary>
    [Fact]
    public async Task Browser_that_was_there_before_the_password_changed_is_told_to_the_shop_when_it_comes_back()
    {
        var thief = _shop.Stranger();
        await thief.SignIn();
        _shop.Records.Shop();
        const string next = "five red kites circling";
        await _desk.Send(await _desk.Open("/account/password"), ("Input.PresentPassword", Runa.Password), ("Input.NewPassword", next));
        Assert.Equal(0, _shop.Records.Count("outbox"));

        Assert.Equal("/shop", (await thief.SignIn(password: next)).Location);

        Assert.Equal(1, _shop.Records.Count("outbox"));
        await AgainAt(_desk, next);
        Assert.Equal(1, _shop.Records.Count("outbox"));
    }

    [Fact]
    public async Task Browsers_are_listed_and_ended_one_by_one_or_all_but_this_one()
    {
        var (phone, tablet, laptop) = (_shop.Stranger(), _shop.Stranger(), _shop.Stranger());
        phone.Client.DefaultRequestHeaders.UserAgent.ParseAdd("Fern/12 (Mobile)");
        foreach (var one in (Visitor[])[phone, tablet, laptop])
            await one.SignIn();

        var page = await _desk.Open("/account/security");
        Assert.Contains("Phone since 25 Nov 2026, 10:00, by password", Regex.Replace(page.Main, @"\s+", " "), StringComparison.Ordinal);
        var line = page.Document.QuerySelectorAll("li").Single(li => li.TextContent.Contains("Fern/12", StringComparison.Ordinal));
        await _desk.Send(page, line.QuerySelector<IHtmlFormElement>("form")!);
        Assert.Equal((false, true), (await phone.IsSignedIn(), await tablet.IsSignedIn()));

        await _desk.Send(page, page.Document.QuerySelector<IHtmlFormElement>("form[action$=others], form[action$=Others]")!);
        Assert.Equal((false, false, true), (await tablet.IsSignedIn(), await laptop.IsSignedIn(), await _desk.IsSignedIn()));
    }

    private async Task<WebPage> SetUp()
    {
        var asked = await _desk.Send(await _desk.Open("/account/second-step"), ("Input.Password", Runa.Password));
        _written = Base32(asked.Main);
        _key = Totp.KeyOf(_written);
        return await _desk.Send(asked, ("Input.Code", Code(0)));
    }

    private async Task<WebPage> Press(string handler, string password = Runa.Password)
    {
        var page = await _desk.Open("/account/second-step");
        var form = page.Document.QuerySelector<IHtmlFormElement>("main form[method=post]")!;
        form.SetAttribute("action", "/account/second-step" + handler);
        return await _desk.Send(page, form, ("Input.Password", password));
    }

    private static async Task<WebPage> Enter(Visitor who, WebPage half, string code) => await who.Send(await who.Open(half.Location!), ("Input.Code", code));

    /// <summary>Signs out, and types name and password again.</summary>
    private static async Task<WebPage> AgainAt(Visitor browser, string password = Runa.Password)
    {
        var page = await browser.Open("/account/sign-out");
        await browser.Send(page);
        return await browser.SignIn(password: password);
    }

    private string Code(int halfMinutesFromNow) => Totp.Code(_key, Totp.StepAt(_shop.Clock.GetUtcNow()) + halfMinutesFromNow);

    private string AccountRow() => _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT concat(two_factor, authenticator_key, recovery_hashes, security_stamp) FROM account"))!;

    private static List<string> Recovery(WebPage page) => [.. page.Document.QuerySelectorAll("li code").Select(c => c.TextContent)];

    /// <summary>The key on the page, or a word that is no key where there is none.</summary>
    private static string Base32(string text) => Written().Match(text) is { Success: true } key ? key.Value.Replace(" ", "", StringComparison.Ordinal) : "no key";

    [GeneratedRegex("[A-Z2-7]{4}( [A-Z2-7]{4}){7}")]
    private static partial Regex Written();
}
