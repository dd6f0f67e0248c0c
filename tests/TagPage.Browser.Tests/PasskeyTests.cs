using Microsoft.Playwright;

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
        await runa.Reads("The passkey “phone” signs in from now on.");

        await SignInWithPasskey(runa);
        await Assertions.Expect(runa.Page).ToHaveURLAsync(stage.Address + "/shop");
        await runa.Go("/account/security");
        await runa.Reads("by passkey");

        await runa.Go("/account/passkeys");
        await runa.Press("Remove the passkey phone");
        await runa.Reads("The passkey no longer signs in.");
        await SignInWithPasskey(runa);
        await runa.Reads("This passkey does not sign in here.");
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
