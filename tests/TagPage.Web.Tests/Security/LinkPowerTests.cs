using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Records.Accounts;
using TagPage.Records.Labels;
using TagPage.Records.Privacy;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>A link with power opens what it was made for or nothing, whatever became of the records meanwhile.</summary>
public sealed class LinkPowerTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;

    public LinkPowerTests()
    {
        _shop.Records.Shop();
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Links_of_a_family_that_was_forgotten_open_nothing_of_the_next_one()
    {
        var (odalys, old) = await Family("Odalys Ferran");
        await All(old, HttpStatusCode.OK);
        _shop.Get<ForgetStore>().Ask(Who.Shop, odalys);
        _shop.Clock.Advance(TimeSpan.FromDays(8));
        _shop.Get<ForgetWorker>().ForgetAll();
        Assert.Equal(0, _shop.Records.Count("client"));

        var (bram, current) = await Family("Bram Tolle");

        await OpensNothing(old, current);
        Assert.True(bram > odalys);
    }

    [Fact]
    public async Task Links_made_since_the_copy_that_was_restored_open_nothing_of_another_family()
    {
        var (_, kept) = await Family("Runo Aske");
        var copy = _shop.Copy();
        var (_, old) = await Family("Odalys Ferran");
        await All(old, HttpStatusCode.OK);
        _shop.Database.GoBackTo(copy);
        await All(old, HttpStatusCode.NotFound);

        var (_, current) = await Family("Bram Tolle");

        await OpensNothing(old, current);
        await All(kept, HttpStatusCode.OK);
    }

    [Fact]
    public async Task Set_up_link_made_since_the_copy_that_was_restored_is_dead()
    {
        _shop.Records.Change("DELETE FROM shop");
        var copy = _shop.Copy();
        var (setUp, old) = (_shop.Get<SetUpStore>(), _shop.Get<SetUpStore>().NewToken()!);
        Assert.True(setUp.IsOpen(old));
        _shop.Database.GoBackTo(copy);
        var current = setUp.NewToken()!;

        Assert.Empty((await _shop.Stranger().Open("/account/set-up/" + old)).Document.QuerySelectorAll("main form"));
        Assert.NotEmpty((await _shop.Stranger().Open("/account/set-up/" + current)).Document.QuerySelectorAll("main form"));
    }

    [Fact]
    public async Task Link_for_a_new_password_made_since_the_copy_that_was_restored_is_dead()
    {
        await _shop.OwnedByRuna();
        var copy = _shop.Copy();
        var (store, old) = (_shop.Get<NewPasswordStore>(), _shop.Get<NewPasswordStore>().NewToken()!);
        Assert.NotNull(store.OwnerBehind(old));
        _shop.Database.GoBackTo(copy);
        var current = store.NewToken()!;

        Assert.Null(store.OwnerBehind(old));
        Assert.NotNull(store.OwnerBehind(current));
    }

    [Fact]
    public async Task Address_of_a_roll_made_since_the_copy_that_was_restored_shows_no_other_roll()
    {
        var (rolls, copy) = (_shop.Get<RollStore>(), _shop.Copy());
        var old = Roll();
        Assert.Equal(HttpStatusCode.OK, (await _runa.Open(old)).Status);
        _shop.Database.GoBackTo(copy);
        var current = Roll();

        Assert.Equal(HttpStatusCode.NotFound, (await _runa.Open(old)).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await _runa.Open("/shop/labels/rolls/1")).Status);
        Assert.Equal(HttpStatusCode.OK, (await _runa.Open(current)).Status);

        string Roll() => rolls.Path(rolls.Get(((Outcome.Done)rolls.Order(Who.Shop, 3, new LabelSettings(), FormKey.New())).Id)!);
    }

    /// <summary>A family with a link of every kind, as in its emails.</summary>
    private async Task<(long Client, IReadOnlyList<string> Links)> Family(string name)
    {
        var client = _shop.Records.Client(name, OnFile.CanaryPhone, OnFile.CanaryMail);
        var links = await _shop.LinksInMails(client);
        Assert.Equal(["/my/", "/n/", "/n/finder/", "/n/stop/"], links.Select(Way).Order(StringComparer.Ordinal));
        return (client, links);
    }

    private async Task All(IReadOnlyList<string> links, HttpStatusCode status)
    {
        foreach (var link in links)
            Assert.Equal(status, (await _shop.Stranger().Open(link)).Status);
    }

    /// <summary>Neither looked at nor sent with the form of a link that works.</summary>
    private async Task OpensNothing(IReadOnlyList<string> old, IReadOnlyList<string> current)
    {
        await All(current, HttpStatusCode.OK);
        var before = _shop.Database.Dump();
        foreach (var link in old)
        {
            var page = await _shop.Stranger().Open(link);
            Assert.Equal(HttpStatusCode.NotFound, page.Status);
            Assert.DoesNotContain("Bram", Readable.Of(page.Text), StringComparison.Ordinal);
            Assert.Equal(HttpStatusCode.NotFound, await Forge(current.Single(c => Way(c) == Way(link)), link));
        }
        using var press = new FormUrlEncodedContent([new("List-Unsubscribe", "One-Click")]);
        var stopped = await _shop.Stranger().Client.PostAsync(new Uri(old.Single(l => Way(l) == "/n/stop/"), UriKind.Relative), press, Token);
        Assert.Equal(HttpStatusCode.NotFound, stopped.StatusCode);
        Assert.Equal(before, _shop.Database.Dump());
    }

    private async Task<HttpStatusCode> Forge(string current, string old)
    {
        var visitor = _shop.Stranger();
        var page = await visitor.Open(current);
        var form = page.Document.QuerySelector<IHtmlFormElement>("main form[method=post]")!;
        form.SetAttribute("action", old);
        return (await visitor.Send(page, form, ("Text", "Thank you!"), ("Input.Rackets[0].Answer", "Gone"))).Status;
    }

    private static string Way(string link) => link[..(link.LastIndexOf('/') + 1)];
}
