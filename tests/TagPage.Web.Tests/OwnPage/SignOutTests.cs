using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>What signing out ends, here and everywhere.</summary>
public sealed class SignOutTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _odalys;
    private readonly string _link;

    public SignOutTests()
    {
        _shop.Records.Shop();
        _odalys = _shop.Records.Family().Client;
        _link = _shop.OwnPageLink(_odalys);
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task One_link_opens_several_phones_each_with_a_session_of_its_own()
    {
        var (phone, tablet) = (await _shop.Stranger().Enters(_link), await _shop.Stranger().Enters(_link));

        await phone.Send(await phone.Open("/my/sign-out"));

        Assert.False(await phone.IsOnOwnPage());
        Assert.True(await tablet.IsOnOwnPage());
    }

    [Fact]
    public async Task Sign_out_everywhere_ends_every_session_and_every_link_of_this_client_alone()
    {
        var (phone, tablet) = (await _shop.Stranger().Enters(_link), await _shop.Stranger().Enters(_link));
        var teo = await _shop.OnOwnPage(_shop.Records.Client("Teo Brandt"));
        var page = await phone.Open("/my/sign-out");

        await phone.Send(page, page.Form("/my/sign-out?handler=Everywhere"));

        Assert.False(await phone.IsOnOwnPage());
        Assert.False(await tablet.IsOnOwnPage());
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Open(_link)).Status);
        Assert.True(await teo.IsOnOwnPage());
    }

    [Theory]
    [InlineData("en", "ask for a new one")]
    [InlineData("es", "pida uno nuevo")]
    public async Task Sign_out_everywhere_says_to_ask_for_a_new_link_because_the_old_ones_are_dead(string language, string ask)
    {
        var phone = await _shop.Stranger().Enters(_link);
        var page = await phone.Open($"/my/sign-out?lang={language}");
        var everywhere = await phone.Open((await phone.Send(page, page.Form("/my/sign-out?handler=Everywhere"))).Location!);
        Assert.Contains(ask, everywhere.Main, StringComparison.Ordinal);
        Assert.DoesNotContain(language == "en" ? "open your private link" : "abra su enlace privado", everywhere.Main, StringComparison.Ordinal);

        phone = await _shop.Stranger().Enters(_shop.OwnPageLink(_odalys));
        var here = await phone.Open((await phone.Send(await phone.Open($"/my/sign-out?lang={language}"))).Location!);

        Assert.Contains(language == "en" ? "open your private link" : "abra su enlace privado", here.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Sign_out_everywhere_and_the_owners_one_press_end_what_reminders_and_notices_open_but_not_the_way_to_stop(bool byOwner)
    {
        var (mine, others) = (await _shop.LinksInMails(_odalys), await _shop.LinksInMails(_shop.Records.Client("Bram Tolle", mail: "bram@canary.example")));
        var visitor = byOwner ? _shop.Owner() : await _shop.Stranger().Enters(_link);
        var page = await visitor.Open(byOwner ? $"/shop/clients/{_odalys}" : "/my/sign-out");
        await visitor.Send(page, page.Form(byOwner ? $"/shop/corner/{_odalys}?handler=SignOut" : "/my/sign-out?handler=Everywhere"));

        foreach (var link in mine)
            Assert.Equal(link.StartsWith("/n/stop/", StringComparison.Ordinal) ? HttpStatusCode.OK : HttpStatusCode.NotFound, (await _shop.Stranger().Open(link)).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Open(_link)).Status);
        foreach (var link in others)
            Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger().Open(link)).Status);
    }

    [Fact]
    public async Task Reminder_still_on_its_way_brings_a_link_that_works()
    {
        var racket = _shop.Records.Racket(_shop.Records.Player(_odalys, "Nell Ferran"));
        _shop.Records.Job(racket, strungOn: new(2026, 9, 1));
        var runa = _shop.Owner();
        await runa.Send(await runa.Open($"/shop/nudges/mail/{_shop.Records.Reminder(_odalys, racket)}"));
        var phone = await _shop.Stranger().Enters(_link);
        var page = await phone.Open("/my/sign-out");
        await phone.Send(page, page.Form("/my/sign-out?handler=Everywhere"));

        var link = (await _shop.MailsSent()).SelectMany(MailLinks.In).Single(l => l.StartsWith("/n/", StringComparison.Ordinal) && !l.StartsWith("/n/stop/", StringComparison.Ordinal));

        Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger().Open(link)).Status);
    }
}
