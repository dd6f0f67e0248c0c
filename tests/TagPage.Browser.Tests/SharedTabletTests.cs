using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using TagPage.Records.Accounts;
using TagPage.Web.Http.SignIn;

namespace TagPage.Browser.Tests;

/// <summary>The tablet on the bench that Runa, who owns the shop, and Bram, who helps, share.</summary>
public sealed class SharedTabletTests(DemoStage stage) : IClassFixture<DemoStage>
{
    private const string Bram = "bram", BramsPassword = "nine wet otters sing", RunasPin = "80417", BramsPin = "2794";

    [Fact]
    public async Task Bram_changes_over_by_pin_and_checks_a_machine_and_Runa_who_changes_back_reads_that_it_was_him()
    {
        Hire();
        await using var phone = await Journey.Phone(stage);
        await SetPin(phone, Bram, BramsPassword, BramsPin);
        await using var tablet = await Journey.Phone(stage);
        await SetPin(tablet, Stage.OwnerName, Stage.OwnerPassword, RunasPin);
        await tablet.Go("/shop/people/tablets");
        await tablet.Fill("What to call it", "Tablet on the bench");
        await tablet.Press("This browser is shared");

        await Change(tablet, Bram, RunasPin);
        await tablet.Reads("This is not the PIN. Type it again and press your name.");
        await Change(tablet, Bram, BramsPin);
        await tablet.Reads("To do");
        await tablet.Follow("drop-weight");
        await tablet.Reads("▲ Its check is overdue since");
        await tablet.Fill("Set to", "50");
        await tablet.Fill("It pulled", "50.4");
        await tablet.Press("Save the check");
        await tablet.Reads("+0.8 %");
        Assert.DoesNotContain("Its check is overdue", await tablet.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);

        await tablet.Go("/account/change");
        await Change(tablet, Stage.OwnerName, RunasPin);
        await tablet.Go("/shop/machines/2");
        await Assertions.Expect(tablet.Page.Locator("tbody tr").First.Locator("td").Last).ToHaveTextAsync(Bram);
        await tablet.Go("/shop/money");
        await tablet.Reads("Sign in as somebody who may see it.");
    }

    private void Hire()
    {
        using var scope = stage.Get<IServiceScopeFactory>().CreateScope();
        var account = new Account { Name = Bram, NormalizedName = Bram.ToUpperInvariant(), Role = Roles.Bench };
        scope.ServiceProvider.GetRequiredService<Owners>().SetPassword(account, BramsPassword);
        stage.Get<AccountStore>().Add(account);
    }

    private static async Task SetPin(Journey person, string name, string password, string pin)
    {
        await person.Go("/account/sign-in");
        await person.Fill("Sign-in name", name);
        await person.Fill("Password", password);
        await person.Press("Sign in");
        await person.Go("/account/pin");
        await person.Fill("Your password", password);
        await person.Fill("PIN", pin);
        await person.Press("Set the PIN");
    }

    private static async Task Change(Journey tablet, string name, string pin)
    {
        await tablet.Fill("Your PIN", pin);
        await tablet.Press(name);
    }
}
