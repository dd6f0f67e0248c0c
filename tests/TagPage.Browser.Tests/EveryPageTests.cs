using SkiaSharp;
using TagPage.Core.Rackets;
using TagPage.Records.Condition;
using TagPage.Records.Demo;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Start.Demo;
using TagPage.Web.Tests.Cast;

namespace TagPage.Browser.Tests;

/// <summary>Every page on a phone, in light and dark: readable by everybody, and no wider than the screen.</summary>
[Long]
public sealed class EveryPageTests(DemoStage stage) : IClassFixture<DemoStage>
{
    private static readonly string[] Open = ["/", "/t", "/t?code=7K2M9Q4TXAX", "/account/sign-in"];

    private static readonly string[] SignedIn =
    [
        "/shop", "/shop/due", "/shop/find?q=a", "/shop/clients", "/shop/clients/1", "/shop/clients/new", "/shop/clients/edit/1",
        "/shop/clients/first-visit", "/shop/clients/found/1", "/shop/payers", "/shop/payers/new", "/shop/players/1", "/shop/pauses/new/1",
        "/shop/rackets/1", "/shop/rackets/edit/1", "/shop/rackets/spec/1", "/shop/rackets/hand-over/1", "/shop/rackets/lost/1",
        "/shop/rackets/pendulum/1", "/shop/customise/pieces/1", "/shop/customise/1?Input.Weight=325&Input.SwingWeight=330",
        "/shop/customise/places/1", "/shop/customise/set/1?Input.Match=true&Input.Frames=1&Input.Frames=2", "/shop/settings/customising",
        "/shop/rackets/what-if/1?Input.TimesAWeek=6", "/shop/hours/new/1", "/shop/readings/new/1", "/shop/found",
        "/shop/jobs/new?racket=1", "/shop/jobs/drop-off/client/1", "/shop/jobs/drop-off/payer/1", "/shop/jobs/together/client/1", "/shop/jobs/pick-up/client/1", "/shop/jobs/ready-all/client/1", "/shop/labels/several?racket=1&racket=2", "/shop/money/receipts?job=1", "/shop/jobs/1", "/shop/jobs/edit/1", "/shop/jobs/strung/1", "/shop/jobs/move/1", "/shop/jobs/move/1?to=2",
        "/shop/jobs/delete/1", "/shop/jobs/condition/1", "/shop/jobs/photo/1", "/shop/jobs/paid/1", "/shop/money/charge/1", "/shop/money/back/1", "/shop/money/prices", "/shop/money", "/shop/money/client/1", "/shop/money/payer/1", "/shop/money/receipt/1", "/shop/money/bill/1", "/shop/money/figures", "/shop/strings", "/shop/strings/new", "/shop/stock", "/shop/stock/1", "/shop/stock/buy/1", "/shop/stock/count/1", "/shop/stock/keep/1", "/shop/frames", "/shop/frames/new", "/shop/nudges", "/shop/nudges/batch",
        "/shop/labels", "/shop/labels/racket/1", "/shop/labels/today", "/shop/labels/free", "/shop/labels/desk", "/shop/labels/rolls",
        "/shop/labels/logo", "/shop/labels/settings",
        "/shop/settings", "/shop/settings/bench", "/shop/settings/shop", "/shop/settings/hours", "/shop/settings/closed", "/shop/settings/page", "/shop/settings/lives", "/shop/settings/lives/reset",
        "/shop/settings/tension", "/shop/settings/instruments", "/shop/settings/address", "/shop/settings/program", "/shop/settings/check", "/shop/backups", "/shop/backups/settings", "/shop/backups/passphrase", "/shop/settings/care", "/shop/settings/care/new",
        "/shop/events", "/shop/events/new", "/shop/events/1", "/shop/events/edit/1", "/shop/events/1/technician/1", "/shop/events/day/1",
        "/desk/1", "/desk/1/board", "/desk/1/technician/1", "/desk/1/in?q=a", "/desk/1/in/visitor", "/desk/1/in/racket/1", "/desk/1/in/player/1", "/desk/1/out?q=9", "/desk/1/shift", "/desk/1/sheet",
        "/desk/1/entry/1", "/desk/1/entry/2", "/desk/1/entry/1/change", "/desk/1/left", "/shop/events/bill/1?team=Norden",
        "/shop/settings/messages", "/shop/settings/reminders", "/shop/import", "/shop/import/list", "/shop/whole", "/shop/help", "/shop/help/restring-by", "/shop/help/licences", "/shop/help/licence-texts/MIT.txt", "/account/password", "/account/security", "/shop/audit", "/shop/people", "/shop/machines", "/shop/machines/new", "/shop/stops", "/shop/stops/new", "/shop/stops/edit/1", "/shop/round", "/shop/prepaid/sell/client/1", "/shop/prepaid/sell/payer/1", "/shop/prepaid/receipt/1", "/shop/prepaid/use/1", "/shop/loans", "/shop/loans/new", "/shop/loans/edit/1", "/shop/loans/lend?client=1", "/shop/loans/back/1", "/shop/visits/new?racket=1", "/shop/visits/226", "/shop/visits/done/226", "/shop/visits/edit/226", "/shop/people/invite", "/shop/people/tablets", "/shop/privacy", "/account/second-step", "/account/passkeys",
    ];

    [Fact]
    public async Task Everybodys_pages_pass_axe_and_fit_a_phone()
    {
        await using var stranger = await Journey.Phone(stage);
        await Walk(stranger, [.. Open, $"/t/{stage.Get<DemoShop>().Showcase}", $"/t/{stage.Get<DemoShop>().Lost}", $"/t/{stage.Get<DemoShop>().Lost}/found", $"/t/{stage.Get<DemoShop>().Showcase}/found"]);
    }

    [Fact]
    public async Task Owners_pages_pass_axe_and_fit_a_phone()
    {
        await using var runa = await Journey.Phone(stage);
        await runa.SignIn();
        BusyDesk.Fill(stage);
        Photograph();
        var sale = Assert.IsType<Outcome.Done>(stage.Get<PrepaidStore>().Sell(Who.Shop, Party.Client(Juergen), new PrepaidEntry { FormKey = FormKey.New(), BoughtOn = stage.Get<ShopClock>().Today, Restrings = 5, AmountMinor = 8000 })).Id;
        await Walk(runa, [.. SignedIn, $"/shop/prepaid/receipt/{sale}", $"/shop/rackets/{stage.Get<DemoStore>().Lost!.RacketId}", $"/shop/tags/finders/{stage.Get<DemoShop>().Showcase}"]);
    }

    /// <summary>He reads German, whose words are long.</summary>
    private const long Juergen = 5;

    private void Photograph()
    {
        using var bitmap = new SKBitmap(1200, 1600);
        bitmap.Erase(SKColors.SeaGreen);
        using var jpeg = bitmap.Encode(SKEncodedImageFormat.Jpeg, 80);
        stage.Get<PhotoStore>().Add(Who.Shop, 1, FormKey.New(), [new PhotoEntry { Width = 1200, Height = 1600, Picture = jpeg.ToArray(), Small = jpeg.ToArray() }]);
        stage.Get<ConditionStore>().Note(Who.Shop, 1, new ConditionEntry { Grommets = PartState.Damaged, GrommetsWords = "two split at the top", Grip = PartState.Fine });
    }

    [Fact]
    public async Task Contact_that_was_shown_passes_axe_and_fits_a_phone()
    {
        await using var finder = await Journey.Phone(stage);
        await finder.Go($"/t/{stage.Get<DemoShop>().Lost}/found");
        await finder.Press("Show contact details");
        await finder.Reads("+44 7700 900351");
        await finder.FitsTheScreen();
        await finder.HasNoAxeViolation();
    }

    [Fact]
    public async Task Fault_that_shows_in_the_dark_alone_is_found()
    {
        await using var stranger = await Journey.Phone(stage);
        await stranger.Go("/t");
        await stranger.HasNoAxeViolation();
        await stranger.Page.EvaluateAsync("() => document.styleSheets[0].insertRule('@media (prefers-color-scheme: dark) { h1 { color: #222222 !important } }')");

        var fault = await Assert.ThrowsAnyAsync<Xunit.Sdk.XunitException>(stranger.HasNoAxeViolation);

        Assert.Contains("in Dark\ncolor-contrast:", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Word_that_is_broken_in_the_middle_is_found()
    {
        await using var stranger = await Journey.Phone(stage);
        await stranger.Go("/t");
        await stranger.FitsTheScreen();
        await stranger.Page.EvaluateAsync("() => { const h1 = document.querySelector('h1'); h1.textContent = 'Once more Restringing'; h1.style = 'width: 14ch; word-break: break-all' }");

        var fault = await Assert.ThrowsAnyAsync<Xunit.Sdk.XunitException>(stranger.FitsTheScreen);

        Assert.Contains("breaks “Restringing”", fault.Message, StringComparison.Ordinal);
    }

    private static async Task Walk(Journey person, IEnumerable<string> paths)
    {
        foreach (var path in paths)
        {
            await person.Go(path);
            Assert.Contains(path.Split('?')[0], person.Page.Url, StringComparison.OrdinalIgnoreCase);
            await person.FitsTheScreen();
            await person.BeginsWithItsMainHeading();
            await person.HasNoAxeViolation();
        }
    }
}
