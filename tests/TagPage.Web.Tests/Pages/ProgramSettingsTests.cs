using Microsoft.Extensions.Configuration;
using TagPage.Web.Http;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>What was set where the program was started, read in the browser.</summary>
public sealed class ProgramSettingsTests
{
    [Fact]
    public async Task Owner_reads_every_setting_and_never_the_password()
    {
        using var shop = new TestShop
        {
            Settings = { ["TagPage:Smtp:Host"] = "mail.heron.example", ["TagPage:Smtp:Port"] = "2525", ["TagPage:Smtp:User"] = "bench", ["TagPage:Smtp:Password"] = "sleepy-heron-99" },
        };

        var page = await shop.Owner().Open("/shop/settings/program");

        Assert.Contains(shop.Folder, page.Main, StringComparison.Ordinal);
        Assert.Contains("mail.heron.example", page.Main, StringComparison.Ordinal);
        Assert.Contains("2525", page.Main, StringComparison.Ordinal);
        Assert.Contains("set, and not shown", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("sleepy-heron", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Test_email_goes_to_the_shop_once()
    {
        using var shop = new TestShop();
        shop.Records.Shop();
        shop.Records.Change("UPDATE shop SET mail = 'shop@heron.example'");
        var owner = shop.Owner();
        var page = await owner.Open("/shop/settings/program");

        await owner.Send(page);
        await owner.Send(page);

        Assert.Contains("email works", Assert.Single(await shop.MailsSent()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Shop_without_an_email_address_is_told_to_add_one()
    {
        using var shop = new TestShop();
        shop.Records.Shop();
        shop.Records.Change("UPDATE shop SET mail = NULL");

        var page = await shop.Owner().Open("/shop/settings/program");

        Assert.Contains("Add one", page.Main, StringComparison.Ordinal);
        Assert.Null(page.Form());
    }

    [Fact]
    public void Setting_names_the_source_that_wins()
    {
        var settings = new ConfigurationManager();
        settings.AddInMemoryCollection([new("TagPage:DataFolder", "first"), new("TagPage:Smtp:Host", "mail.heron.example")]);
        settings.AddCommandLine(["--TagPage:DataFolder=second", "--TagPage:Address="]);

        var sources = new SettingSource(settings);

        Assert.Equal("the command line, --TagPage:DataFolder", sources.Of("TagPage:DataFolder"));
        Assert.Equal("the way the program was started", sources.Of("TagPage:Smtp:Host"));
        Assert.Null(sources.Of("TagPage:Address"));
    }
}
