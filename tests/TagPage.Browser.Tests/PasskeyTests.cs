using Dapper;
using Microsoft.Playwright;
using TagPage.Records.Storage;

namespace TagPage.Browser.Tests;

/// <summary>The browser's own passkeys, on an authenticator that it plays by itself.</summary>
public sealed class PasskeyTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Fact]
    public async Task Owner_makes_a_passkey_signs_in_with_it_and_no_more_once_it_is_removed()
    {
        await using var runa = await Journey.Desk(stage);
        await PlugIn(runa.Page);
        await runa.SignIn();
        await runa.Go("/account/passkeys");

        await runa.Fill("What to call it", "phone");
        await runa.Fill("Your password", "seven slow geese wade");
        await Click(runa, "Make a passkey");
        await runa.Reads("This is not the password you sign in with.");
        await runa.Fill("Your password", Stage.OwnerPassword);
        await Click(runa, "Make a passkey");
        await runa.Reads("You can now sign in with the passkey “phone”.");

        await SignInWithPasskey(runa);
        await Assertions.Expect(runa.Page).ToHaveURLAsync(stage.Address + "/shop");
        await runa.Go("/account/security");
        await runa.Reads("by passkey");

        await runa.Go("/account/passkeys");
        await runa.Press("Remove the passkey phone");
        await runa.Reads("That passkey no longer works.");
        await SignInWithPasskey(runa);
        await runa.Reads("This passkey does not work here.");
    }

    /// <summary>Whoever got hold of an answer, with all cookies of the browser that sent it, sends it once more.</summary>
    [Fact]
    public async Task Answer_of_a_passkey_signs_in_once()
    {
        await using var runa = await Journey.Desk(stage);
        await PlugIn(runa.Page);
        await runa.SignIn();
        await runa.Go("/account/passkeys");
        await runa.Fill("What to call it", "once");
        await runa.Fill("Your password", Stage.OwnerPassword);
        await Click(runa, "Make a passkey");
        await runa.Reads("You can now sign in with the passkey “once”.");
        IRequest? sent = null;
        Dictionary<string, string> headers = [];
        await runa.Page.RouteAsync(new System.Text.RegularExpressions.Regex("handler=passkey", System.Text.RegularExpressions.RegexOptions.IgnoreCase), async route =>
        {
            (sent, headers) = (route.Request, await route.Request.AllHeadersAsync());
            await route.ContinueAsync();
        });

        await SignInWithPasskey(runa);
        await Assertions.Expect(runa.Page).ToHaveURLAsync(stage.Address + "/shop");
        // As with passkeys that a maker’s cloud copies: they count nothing, so that the count tells no answer from the one before.
        stage.Get<Database>().Write(c => c.Execute("UPDATE passkey SET sign_count = 0"));
        using var thief = new HttpClient(new HttpClientHandler { UseCookies = false, AllowAutoRedirect = false });
        using var again = new HttpRequestMessage(HttpMethod.Post, sent!.Url) { Content = new ByteArrayContent(sent.PostDataBuffer!) };
        foreach (var (name, value) in headers.Where(h => h.Key is "content-type" or "cookie" or "origin"))
            (name == "content-type" ? (System.Net.Http.Headers.HttpHeaders)again.Content.Headers : again.Headers).TryAddWithoutValidation(name, value);
        using var answer = await thief.SendAsync(again, TestContext.Current.CancellationToken);

        Assert.Contains("cookie", headers.Keys);
        // Where a refused form is shown; else it would lead on into the shop.
        Assert.Equal(System.Net.HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.False(answer.Headers.TryGetValues("Set-Cookie", out var cookies) && cookies.Any(c => c.StartsWith("owner=", StringComparison.Ordinal) && !c.StartsWith("owner=;", StringComparison.Ordinal)));
    }

    private static async Task SignInWithPasskey(Journey runa)
    {
        await runa.Go("/account/sign-out");
        await runa.Page.Locator("main").GetByRole(AriaRole.Button, new() { Name = "Sign out" }).ClickAsync();
        await runa.Go("/account/sign-in");
        await Click(runa, "Sign in with a passkey");
    }

    private static Task Click(Journey runa, string button) => runa.Page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync();

    /// <summary>A device that says yes to everything, as the browser's tools provide it.</summary>
    private static async Task PlugIn(IPage page)
    {
        var tools = await page.Context.NewCDPSessionAsync(page);
        await tools.SendAsync("WebAuthn.enable");
        await tools.SendAsync("WebAuthn.addVirtualAuthenticator", new()
        {
            ["options"] = new Dictionary<string, object>
            {
                ["protocol"] = "ctap2",
                ["transport"] = "internal",
                ["hasResidentKey"] = true,
                ["hasUserVerification"] = true,
                ["isUserVerified"] = true,
                ["automaticPresenceSimulation"] = true,
            },
        });
    }
}
