using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Odalys sees and changes what the shop has on file about her.</summary>
public sealed class DetailsTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _player, _racket;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        (_odalys, _player, _racket, _, _) = _shop.Records.Family();
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Page_shows_contact_reminders_payer_and_players_and_not_the_shops_note()
    {
        _shop.Records.Change("INSERT INTO payer (name, phone) VALUES ('Eastmere Academy', '+442079460777')");
        _shop.Records.Change("UPDATE client SET payer_id = 1, second_name = 'Joss Ferran', quiet_months = 192");

        var page = await _phone.Open("/my/details");

        foreach (var shown in new[] { "Odalys Ferran", "+44 20 7946 0958", OnFile.CanaryMail, "Joss Ferran", "Eastmere Academy", "July, August", "Pim Ferran" })
            Assert.Contains(shown, page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("canary: ring", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("7946 0777", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Contact_changes_with_a_code_and_the_old_address_is_told()
    {
        await _phone.ProvesToBe(_shop);

        var answer = await _phone.Send(await _phone.Open("/my/contact"), ("Input.Mail", "odalys@new.example"), ("Input.Phone", "020 7946 0111"), ("Input.SecondName", "Joss"), ("Input.SecondPhone", "020 7946 0222"));
        await _shop.MailsSent();

        Assert.Equal("/my/details", answer.Location);
        Assert.Equal("odalys@new.example|+442079460111|Joss|+442079460222", _shop.Records.Text("SELECT mail || '|' || phone || '|' || second_name || '|' || second_phone FROM client"));
        var told = Directory.GetFiles(Path.Combine(_shop.Folder, "mail")).Select(File.ReadAllText).Single(m => m.Contains("have just been changed", StringComparison.Ordinal));
        Assert.Contains($"<{OnFile.CanaryMail}>", told, StringComparison.Ordinal);
        Assert.DoesNotContain("new.example", told, StringComparison.Ordinal);
        Assert.Contains("Joss", (await _shop.Owner().Open($"/shop/clients/{_odalys}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_code_nothing_of_the_contact_changes()
    {
        Assert.StartsWith("/my/code", (await _phone.Open("/my/contact")).Location, StringComparison.Ordinal);
        await _phone.ProvesToBe(_shop);
        var page = await _phone.Open("/my/contact");
        _shop.Clock.Advance(TimeSpan.FromMinutes(10));

        var answer = await _phone.Send(page, ("Input.Mail", "mallory@evil.example"));

        Assert.Contains("Your code expired", answer.Main, StringComparison.Ordinal);
        Assert.Contains("mallory@evil.example", answer.Text, StringComparison.Ordinal);
        Assert.Equal(OnFile.CanaryMail, _shop.Records.Text("SELECT mail FROM client"));
    }

    [Fact]
    public async Task What_finders_were_shown_does_not_pass_to_a_new_number_unasked()
    {
        _shop.Records.Agree("Contact", always: true, mail: true);
        await _phone.ProvesToBe(_shop);

        await _phone.Send(await _phone.Open("/my/contact"), ("Input.Mail", "odalys@new.example"), ("Input.Phone", "020 7946 0111"));

        Assert.Equal("Message|0|0", _shop.Records.Text("SELECT found_choice || '|' || found_always || '|' || found_shows_mail FROM client"));
    }

    [Theory]
    [InlineData("Input.Name", "", "Enter a name")]
    [InlineData("Input.Phone", "12", "does not look like a phone number")]
    [InlineData("Input.Mail", "odalys", "Enter an email address")]
    [InlineData("Input.SecondMail", "joss@", "Enter an email address")]
    public async Task What_does_not_fit_is_said_and_nothing_changes(string field, string value, string said)
    {
        await _phone.ProvesToBe(_shop);
        var before = _shop.Records.Text("SELECT name || phone || mail || version FROM client");

        var answer = await _phone.Send(await _phone.Open("/my/contact"), (field, value));

        Assert.Contains(said, Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal(before, _shop.Records.Text("SELECT name || phone || mail || version FROM client"));
    }

    [Fact]
    public async Task Reminders_by_sms_with_quiet_months_and_a_language_are_kept_and_the_owner_sees_them()
    {
        var page = await _phone.Open("/my/reminders");
        var form = (AngleSharp.Html.Dom.IHtmlFormElement)page.Document.QuerySelector("main form")!;
        foreach (var month in new[] { "7", "11" })
            page.Document.QuerySelector($"#month-{month}")!.SetAttribute("checked", "");

        await _phone.Send(page, form, ("Input.Way", "Sms"), ("Input.Language", "es"));

        Assert.Equal("1|Sms|1088|es", _shop.Records.Text("SELECT reminders || '|' || remind_by || '|' || quiet_months || '|' || language FROM client"));
        Assert.Contains("yes, by SMS, not in July, November", (await _shop.Owner().Open($"/shop/clients/{_odalys}")).Main, StringComparison.Ordinal);
        Assert.Contains("Sus datos", (await _phone.Open("/my/details")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Quiet_month_is_obeyed_when_a_reminder_is_made_unless_the_owner_insists()
    {
        _shop.Records.Change("UPDATE client SET quiet_months = 1024");
        _shop.Records.Change("UPDATE racket SET own_date = '2026-11-20'");
        var runa = _shop.Owner();
        var page = await runa.Open($"/shop/nudges/new?client={_odalys}");
        Assert.Contains("no reminders this month", page.Main, StringComparison.Ordinal);

        Assert.Contains("no reminders this month", Assert.Single((await runa.Send(page)).Errors), StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("reminder"));
        await runa.Send(page, ("Input.Insist", "true"));

        Assert.Equal(1, _shop.Records.Count("reminder"));
    }

    [Fact]
    public async Task Never_holds_back_what_is_on_its_way()
    {
        var reminder = _shop.Records.Reminder(_odalys, _racket);
        _shop.Records.Change("INSERT INTO outbox (kind, to_client_id, reminder_id, message_id, not_before, made_at) VALUES ('Reminder', @odalys, @reminder, 'm', '2026-11-25T00:00:00.000Z', '2026-11-25T00:00:00.000Z')", new { odalys = _odalys, reminder });

        await _phone.Send(await _phone.Open("/my/reminders"), ("Input.Way", "Never"));

        Assert.Equal("0|2026-11-25|Failed", _shop.Records.Text("SELECT reminders || '|' || reminders_changed_on || '|' || (SELECT state FROM outbox) FROM client"));
    }

    [Fact]
    public async Task Word_about_who_pays_stands_on_the_owners_list()
    {
        var page = await _phone.Open("/my/details");
        for (var n = 0; n < 3; n++)
            await _phone.Send(page, page.Form("/my/details?handler=Payer"), ("Input.Words", "Her grandmother, from January"));

        Assert.Contains("says about who pays: “Her grandmother, from January”", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("client_request"));
    }

    [Fact]
    public async Task Player_who_is_of_age_takes_the_rackets_to_a_record_of_their_own()
    {
        _shop.Records.Agree("Contact");
        await _phone.ProvesToBe(_shop);

        await _phone.Send(await _phone.Open($"/my/own/{_player}"), ("Input.Mail", "pim@own.example"));

        Assert.Equal("Pim Ferran|pim@own.example|Shop|0", _shop.Records.Text("SELECT c.name || '|' || c.mail || '|' || c.found_choice || '|' || p.junior FROM player p JOIN client c ON c.id = p.client_id"));
        Assert.Equal(HttpStatusCode.NotFound, (await _phone.Open($"/my/rackets/{_racket}")).Status);
        var mail = (await _shop.MailsSent()).Single(m => m.Contains("/my/", StringComparison.Ordinal) && m.StartsWith("Hello Pim", StringComparison.Ordinal));
        var pim = await _shop.Stranger().Enters(new Uri(mail.Split('\n').Single(l => l.StartsWith("https://", StringComparison.Ordinal))).PathAndQuery);
        Assert.Equal(HttpStatusCode.OK, (await pim.Open($"/my/rackets/{_racket}")).Status);
        Assert.Contains("made a player a client of their own", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Own_record_is_not_made_without_a_code()
    {
        await _phone.ProvesToBe(_shop);
        var page = await _phone.Open($"/my/own/{_player}");
        _shop.Clock.Advance(TimeSpan.FromMinutes(10));

        await _phone.Send(page, ("Input.Mail", "mallory@evil.example"));

        Assert.Equal(1, _shop.Records.Count("client"));
    }

    [Fact]
    public async Task Racket_passed_on_leaves_with_a_retired_tag_and_its_history_stays()
    {
        var tag = _shop.Records.Text("SELECT code FROM tag");
        _shop.Records.Change("UPDATE racket SET lost_since = '2026-11-20'");
        await _phone.ProvesToBe(_shop);

        await _phone.Send(await _phone.Open($"/my/pass-on/{_racket}"));

        Assert.Equal("Sold|", _shop.Records.Text("SELECT state || '|' || COALESCE(lost_since, '') FROM racket"));
        Assert.Equal(HttpStatusCode.Gone, (await _shop.Stranger().Open($"/t/{tag}")).Status);
        Assert.Contains("no longer yours", (await _phone.Open("/my")).Main, StringComparison.Ordinal);
        Assert.Contains("passed a racket on: racket 1", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_with_an_open_ticket_is_not_passed_on()
    {
        await _phone.ProvesToBe(_shop);
        var page = await _phone.Open($"/my/pass-on/{_racket}");
        _shop.Records.Job(_racket);

        Assert.Contains("is still open", (await _phone.Send(page)).Main, StringComparison.Ordinal);
        Assert.Equal("InTurn", _shop.Records.Text("SELECT state FROM racket"));
    }

    [Theory]
    [InlineData("/my/contact")]
    [InlineData("/my/export")]
    [InlineData("/my/forget")]
    [InlineData("/my/own/1")]
    [InlineData("/my/pass-on/1")]
    public async Task What_could_hurt_asks_for_a_code_first(string address) =>
        Assert.Equal("/my/code?next=" + Uri.EscapeDataString(address), (await _phone.Open(address)).Location);
}
