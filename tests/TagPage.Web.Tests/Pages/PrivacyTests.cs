using TagPage.Records.Privacy;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>The record of processing that Runa prints, and what a junior’s record starts with.</summary>
public sealed class PrivacyTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;

    public PrivacyTests() => _runa = _shop.Owner();

    public void Dispose() => _shop.Dispose();

    private async Task<string> Read() => System.Text.RegularExpressions.Regex.Replace((await _runa.Open("/shop/privacy")).Main, @"\s+", " ");

    [Fact]
    public async Task It_names_the_shop_its_purposes_and_how_long_everything_is_kept()
    {
        _shop.Records.Shop();
        _shop.Records.Family();

        var said = await Read();

        Assert.Contains("Ferrygate Racket Bench, 3 Chandler’s Steps, Eastmere, GB", said, StringComparison.Ordinal);
        Assert.Contains("Clients: 1. Players: 1, of whom juniors: 1.", said, StringComparison.Ordinal);
        Assert.Contains("Bringing lost rackets home", said, StringComparison.Ordinal);
        Assert.Contains("the finder’s words, way to be reached, mark, and the emails made of them 30 days", said, StringComparison.Ordinal);
        Assert.Contains("Laws differ by country, and yours decides", said, StringComparison.Ordinal);
        foreach (var name in (string[])["Odalys", "Pim", OnFile.CanaryMail, OnFile.CanaryNote])
            Assert.DoesNotContain(name, said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_tells_what_the_settings_are_and_what_clients_chose()
    {
        _shop.Records.Shop();
        _shop.Records.Family();
        var before = await Read();
        Assert.Contains("Backups stay in the data folder.", before, StringComparison.Ordinal);
        Assert.Contains("0 let a finder see how to reach them, 0 let a finder write to them; for the other 1 the shop helps", before, StringComparison.Ordinal);

        _shop.Records.Change("INSERT INTO backup_setting (id, folder, days, weeks, months) VALUES (1, '/mnt/backups', 9, 5, 3)");
        _shop.Records.Agree("Contact");

        var after = await Read();
        Assert.Contains("Whoever can read /mnt/backups, where each night’s backup goes, unsealed.", after, StringComparison.Ordinal);
        Assert.Contains("9 days, 5 weeks and 3 months", after, StringComparison.Ordinal);
        Assert.Contains("1 let a finder see how to reach them", after, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Downloads_and_deletions_stand_there_with_their_days_and_by_number()
    {
        _shop.Records.Shop();
        var odalys = _shop.Records.Client("Odalys Ferran", null, OnFile.CanaryMail);
        Assert.Contains("Nothing was downloaded or deleted in the last year.", await Read(), StringComparison.Ordinal);

        var phone = await _shop.OnOwnPage(odalys);
        await phone.ProvesToBe(_shop);
        await phone.Send(await phone.Open("/my/export"));
        Assert.Contains($"25 Nov 2026: client {odalys}, downloaded by the client", await Read(), StringComparison.Ordinal);
        Assert.IsType<Outcome.Done>(_shop.Get<ForgetStore>().Ask(Who.Shop, odalys));

        var asked = (await _runa.Open("/shop/privacy")).Document.QuerySelectorAll("section[aria-labelledby=requests] tbody :is(th, td)").Select(c => c.TextContent);
        Assert.Equal([$"Client {odalys}", "25 Nov 2026", "2 Dec 2026, or once open tickets are settled"], asked);
        _shop.Clock.Advance(TimeSpan.FromDays(8));
        _shop.Get<ForgetWorker>().ForgetAll();
        var done = await Read();
        Assert.Contains($"3 Dec 2026: client {odalys}, deleted", done, StringComparison.Ordinal);
        Assert.DoesNotContain("Odalys", done, StringComparison.Ordinal);
    }

    /// <summary>Nothing that a guardian has to agree to is agreed to, and nothing is asked for that the work does not need.</summary>
    [Fact]
    public async Task New_junior_starts_with_the_least()
    {
        _shop.Records.Shop();
        var form = await _runa.Open("/shop/clients/first-visit");
        var asked = form.Document.QuerySelectorAll("main [name]").Select(e => e.GetAttribute("name")!.ToLowerInvariant()).ToList();
        Assert.DoesNotContain(asked, name => ((string[])["birth", "age", "school", "club", "photo", "level", "sex"]).Any(w => name.EndsWith(w, StringComparison.Ordinal)));

        await _runa.Send(form, ("Input.Name", "Odalys Ferran"), ("Input.PlayerName", "Pim"), ("Input.Junior", "true"), ("Input.Sport", "Tennis"), ("Input.Frame", "Pellmore Meadow 98"),
            ("Input.PatternMains", "16"), ("Input.PatternCrosses", "19"));

        Assert.Equal("Shop|0|0||", _shop.Records.Text("SELECT found_choice || '|' || found_always || '|' || found_shows_mail || '|' || coalesce(found_choice_on, '') || '|' || note FROM client"));
        Assert.Equal("1||", _shop.Records.Text("SELECT junior || '|' || label_name || '|' || note FROM player"));
        Assert.Equal("0", _shop.Records.Text("SELECT specs_on_tag FROM racket"));
    }
}
