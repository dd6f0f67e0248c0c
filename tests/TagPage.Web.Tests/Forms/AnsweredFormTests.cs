using System.Net;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Forms;

/// <summary>
/// A form that is refused: the browser is sent on to the page that says so, so that going back to it later is a look and no
/// second sending.
/// </summary>
public sealed partial class AnsweredFormTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _racket;
    private string _tag = "", _lost = "";
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        (_odalys, _, _racket, var tag, _) = _shop.Records.Family();
        _shop.Records.Agree("Message");
        (_tag, _lost) = ($"/t/{tag}/found", $"/my/lost/{_racket}");
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Refused_form_is_shown_at_an_address_that_can_be_looked_at_again_with_what_was_typed()
    {
        var before = _shop.Database.Dump();

        var again = await Refused(_phone, _lost, ("Input.Since", "2026-11-24"), ("Input.Note", "call 020 7946 0958"));

        for (var look = 0; look < 2; look++)
        {
            var page = await _phone.Open(again);
            Assert.Equal(HttpStatusCode.OK, page.Status);
            Assert.Contains("leave out the number", Assert.Single(page.Errors), StringComparison.Ordinal);
            Assert.Equal("call 020 7946 0958", page.Document.QuerySelector("[name='Input.Note']")!.GetAttribute("value"));
            Assert.True(page.Response.Headers.CacheControl!.NoStore);
        }
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Preview_is_shown_at_an_address_that_can_be_looked_at_again()
    {
        var owner = _shop.Owner();
        var form = await owner.Open($"/shop/labels/racket/{_racket}");

        var answer = await owner.Post(form, (IHtmlFormElement)form.Form()!, ("Preview", "true"), ("Input.OwnLine", "go low"));

        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.Equal("go low", (await owner.Open(answer.Location!)).Document.QuerySelector("[name='Input.OwnLine']")!.GetAttribute("value"));
        Assert.Equal("go low", (await owner.Open(answer.Location!)).Document.QuerySelector("[name='Input.OwnLine']")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Corrected_there_it_is_done_and_a_second_mistake_has_an_address_of_its_own()
    {
        var again = await Refused(_phone, _lost, ("Input.Note", "mail me @ home"));
        var second = await Refused(_phone, again, ("Input.Note", "call 020 7946 0958"));
        Assert.Single(Keys().Matches(second));
        Assert.NotEqual(again, second);

        var corrected = await _phone.Open(second);
        var done = await _phone.Send(corrected, FormWith(corrected, "Input.Note"), ("Input.Note", "left at court 3"));

        Assert.Equal($"/my/rackets/{_racket}", done.Location);
        Assert.Equal("left at court 3", _shop.Records.Text("SELECT lost_note FROM racket"));
        Assert.Contains("leave out the @", (await _phone.Open(again)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_else_and_no_other_page_shows_what_was_typed()
    {
        var again = await Refused(_phone, _lost, ("Input.Note", "call 020 7946 0958"));
        var (teo, other) = (await _shop.OnOwnPage(_shop.Records.Client("Teo Brandt")), await _shop.OnOwnPage(_odalys));

        Assert.Equal(HttpStatusCode.NotFound, (await teo.Open(again)).Status);
        Assert.StartsWith("/my/link", (await _shop.Stranger().Open(again)).Location, StringComparison.Ordinal);
        Assert.Empty((await other.Open(again)).Errors);
        Assert.Empty((await _phone.Open(again.Replace("lost", "order", StringComparison.Ordinal))).Errors);
        Assert.Empty((await _phone.Open(_lost + "?again=nonsense")).Errors);
    }

    [Fact]
    public async Task After_half_an_hour_the_form_is_there_anew()
    {
        var again = await Refused(_phone, _lost, ("Input.Note", "call 020 7946 0958"));
        _shop.Clock.Advance(TimeSpan.FromMinutes(31));

        var page = await _phone.Open(again);

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.DoesNotContain("020 7946", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Finders_form_and_the_shops_are_answered_alike()
    {
        var finder = _shop.Stranger();
        var again = await Refused(finder, _tag, "/message", ("Input.Message", ""), ("Input.Reach", "07700 900123"));
        var page = await finder.Open(again);
        Assert.Equal(["Write a message before you send it."], page.Errors);
        Assert.Equal("07700 900123", page.Document.QuerySelector("[name='Input.Reach']")!.GetAttribute("value"));
        Assert.Contains("style-src 'sha256-", page.Response.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);

        again = await Refused(finder, _tag, "/answer", ("says", "AtDesk"), ("Input.Place", ""));
        Assert.Equal(["Say which place that is, so that the racket can be found."], (await finder.Open(again)).Errors);

        var runa = _shop.Owner();
        again = await Refused(runa, "/shop/strings/new", ("Input.Name", ""), ("Input.GaugeMm", "9"));
        Assert.NotEmpty((await runa.Open(again)).Errors);
        Assert.Equal(0, _shop.Records.Count("found_event"));
    }

    /// <summary>The address where the refused form is shown; the test follows no redirect by itself.</summary>
    private static Task<string> Refused(Visitor visitor, string address, params (string, string)[] typed) => Refused(visitor, address, "", typed);

    private static async Task<string> Refused(Visitor visitor, string address, string form, params (string, string)[] typed)
    {
        var page = await visitor.Open(address);
        var answer = await visitor.Post(page, form.Length == 0 ? FormWith(page, typed[0].Item1) : page.Form(form), typed);
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.Empty(answer.Text);
        return answer.Location!;
    }

    private static IHtmlFormElement FormWith(WebPage page, string field) =>
        page.Document.QuerySelector<IHtmlFormElement>($"main form[method=post]:has([name='{field}'])")!;

    [GeneratedRegex("again=")]
    private static partial Regex Keys();
}
