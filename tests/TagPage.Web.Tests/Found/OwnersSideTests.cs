using System.Net;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Found;

/// <summary>Runa notes what Odalys agreed to, marks Pim's racket as lost and back, and reads what finders did.</summary>
public sealed class OwnersSideTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;
    private readonly long _client, _racket;
    private readonly TagCode _code;

    public OwnersSideTests()
    {
        _shop.Records.Shop();
        (_client, _, _racket, _code, _) = _shop.Records.Family();
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Choice_is_kept_with_its_day_and_shown_on_the_clients_page()
    {
        Assert.Contains("the shop’s contact details only", (await _runa.Open($"/shop/clients/{_client}")).Main, StringComparison.Ordinal);

        var saved = await Choose(("Input.Choice", "Contact"), ("Input.ShowsMail", "true"), ("Input.Always", "true"));

        Assert.Equal($"/shop/clients/{_client}", saved.Location);
        Assert.Equal("Contact|2026-11-25|1|1", Kept());
        var page = await _runa.Open($"/shop/clients/{_client}");
        Assert.Contains("contact details shown while lost, and messages, always, with the email address, since 25 Nov 2026", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ticks_without_the_contact_mean_nothing_and_are_not_kept()
    {
        await Choose(("Input.Choice", "Message"), ("Input.ShowsMail", "true"), ("Input.Always", "true"));

        Assert.Equal("Message|2026-11-25|0|0", Kept());
    }

    [Fact]
    public async Task Contact_cannot_be_chosen_while_there_is_none_to_show()
    {
        _shop.Records.Change("UPDATE client SET phone = NULL");

        var page = await Choose(("Input.Choice", "Contact"));

        Assert.Contains("There is nothing to show yet", Assert.Single(page.Errors), StringComparison.Ordinal);
        Assert.Equal("Shop||0|0", Kept());
    }

    [Fact]
    public async Task One_press_takes_the_choice_back()
    {
        await Choose(("Input.Choice", "Contact"), ("Input.Always", "true"));
        var page = await _runa.Open($"/shop/clients/{_client}");

        await _runa.Send(page, page.Form("?handler=Withdraw"));

        Assert.Equal("Shop|2026-11-25|0|0", Kept());
        Assert.False((await _runa.Open($"/shop/clients/{_client}")).HasForm("?handler=Withdraw"));
    }

    [Fact]
    public async Task Choice_saved_by_somebody_else_meanwhile_is_not_overwritten_unseen()
    {
        var page = await _runa.Open($"/shop/clients/found/{_client}");
        await Choose(("Input.Choice", "Message"));

        var refused = await _runa.Send(page, ("Input.Choice", "Contact"));

        Assert.Contains("Somebody else saved", refused.Main, StringComparison.Ordinal);
        Assert.Equal("Message|2026-11-25|0|0", Kept());
    }

    [Fact]
    public async Task Racket_is_marked_lost_with_a_note_and_back_with_one_press()
    {
        var done = await Lose("Left at court 3 on Sunday.");
        Assert.Equal($"/shop/rackets/{_racket}", done.Location);
        var card = await _runa.Open(done.Location!);
        Assert.Contains("Lost since 20 Nov 2026", card.Main, StringComparison.Ordinal);
        Assert.Contains("Left at court 3 on Sunday.", (await _shop.Stranger().Open("/t/" + _code)).Main, StringComparison.Ordinal);

        await _runa.Send(card, card.Form("?handler=back"));

        Assert.Equal("|", _shop.Records.Text("SELECT COALESCE(lost_since, '') || '|' || lost_note FROM racket"));
        Assert.DoesNotContain("court 3", (await _shop.Stranger().Open("/t/" + _code)).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Ring Odalys", "leave out the name")]
    [InlineData("It is pim’s", "leave out the name")]
    [InlineData("Ring 07946 0958", "leave out the number")]
    [InlineData("odalys@x", "leave out the @")]
    [InlineData("See court.example", "leave out the link")]
    public async Task Note_that_leads_to_a_person_is_refused_and_nothing_is_marked(string note, string advice)
    {
        var page = await Lose(note);

        Assert.Contains(advice, Assert.Single(page.Errors), StringComparison.Ordinal);
        Assert.Equal(note, page.Document.QuerySelector("#Input_Note")!.GetAttribute("value"));
        Assert.Equal("", _shop.Records.Text("SELECT COALESCE(lost_since, '') FROM racket"));
    }

    [Fact]
    public async Task Day_to_come_is_refused()
    {
        var page = await Lose("", "2026-11-26");

        Assert.Contains("in the future", Assert.Single(page.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Day_long_ago_is_refused()
    {
        var page = await Lose("", "2025-11-24");

        Assert.Contains("more than a year ago", Assert.Single(page.Errors), StringComparison.Ordinal);
        Assert.Equal("", _shop.Records.Text("SELECT COALESCE(lost_since, '') FROM racket"));
    }

    [Fact]
    public async Task Blocked_tag_gives_finders_the_shop_alone_until_it_is_opened_again()
    {
        _shop.Records.Agree("Contact");
        await ToggleBlock();
        Assert.False((await _shop.Stranger().FoundPage(_code)).HasForm("/contact"));
        Assert.Contains("Blocked for finders", (await _runa.Open($"/shop/rackets/{_racket}")).Main, StringComparison.Ordinal);

        await ToggleBlock();

        Assert.True((await _shop.Stranger().FoundPage(_code)).HasForm("/contact"));
    }

    [Fact]
    public async Task Log_lists_what_finders_did_on_the_card_and_on_a_page_of_its_own()
    {
        _shop.Records.Agree("Contact");
        await _shop.Stranger().AskForContact(_code);
        _shop.Clock.Advance(TimeSpan.FromMinutes(5));
        await _shop.Stranger().Writes(_code, "<b>At the desk</b>", "07700 900123");

        foreach (var address in new[] { $"/shop/rackets/{_racket}", "/shop/found" })
        {
            var page = await _runa.Open(address);
            var lines = page.Document.QuerySelectorAll(".log > li").Select(l => l.TextContent).ToList();
            Assert.Equal(2, lines.Count);
            Assert.Contains("<b>At the desk</b>", lines[0], StringComparison.Ordinal);
            Assert.Contains("07700 900123", lines[0], StringComparison.Ordinal);
            Assert.Contains("25 Nov 2026, 10:05", lines[0], StringComparison.Ordinal);
            Assert.Contains("Contact details shown", lines[1], StringComparison.Ordinal);
        }
        Assert.Contains("Pim Ferran, racket 1", (await _runa.Open("/shop/found")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Log_goes_on_over_pages()
    {
        for (var n = 0; n < 60; n++)
            _shop.Records.Change("INSERT INTO found_event (code, racket_id, client_id, kind, at, source, form_key) VALUES (@_code, @_racket, @_client, 'Shown', '2026-11-25T09:00:00.000Z', 's', @n)", new { _code, _racket, _client, n = $"k{n}" });

        var first = await _runa.Open("/shop/found");
        var second = await _runa.Open(first.Document.QuerySelector("a[href*=before]")!.GetAttribute("href")!);

        Assert.Equal((50, 10), (first.Document.QuerySelectorAll(".log > li").Length, second.Document.QuerySelectorAll(".log > li").Length));
        Assert.Null(second.Document.QuerySelector("a[href*=before]"));
    }

    private async Task<WebPage> Choose(params (string, string)[] fields) => await _runa.Send(await _runa.Open($"/shop/clients/found/{_client}"), fields);

    [Fact]
    public async Task Note_with_the_name_of_the_second_contact_is_refused_too()
    {
        _shop.Records.Change("UPDATE client SET second_name = 'Benedikta Sorrel'");

        var page = await Lose("Ask for Benedikta at court 3.");

        Assert.Contains("leave out the name of the client or player", Assert.Single(page.Errors), StringComparison.Ordinal);
        Assert.Equal("", _shop.Records.Text("SELECT COALESCE(lost_since, '') FROM racket"));
    }

    private async Task<WebPage> Lose(string note, string since = "2026-11-20") =>
        await _runa.Send(await _runa.Open($"/shop/rackets/lost/{_racket}"), ("Input.Since", since), ("Input.Note", note));

    private async Task ToggleBlock()
    {
        var done = await _runa.Send(await _runa.Open($"/shop/tags/finders/{_code}"));
        Assert.Equal(HttpStatusCode.Redirect, done.Status);
    }

    private string Kept() => _shop.Records.Text("SELECT found_choice || '|' || COALESCE(found_choice_on, '') || '|' || found_always || '|' || found_shows_mail FROM client");
}
