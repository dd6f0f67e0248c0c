using System.Net;
using TagPage.Records.Clients;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class ClientTests : IDisposable
{
    private static readonly (string, string)[] Odalys =
        [("Input.Name", "Odalys Ferran"), ("Input.Phone", "020 7946 0958"), ("Input.Mail", "odalys@ferran.example"), ("Input.Language", "es")];

    private readonly TestShop _shop = new();

    private ClientStore Store => _shop.Get<ClientStore>();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_adds_a_client_whose_number_is_kept_with_its_country()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/clients/new"), Odalys);

        Assert.Equal("/shop/clients/1", answer.Location);
        var saved = Store.Get(1)!;
        Assert.Equal(("Odalys Ferran", "+442079460958", "es", true), (saved.Name, saved.Phone, saved.Language, saved.Reminders));
        var page = await owner.Open("/shop/clients/1");
        Assert.NotNull(page.Document.QuerySelector("a[href='tel:+44-20-7946-0958']"));
        Assert.NotNull(page.Document.QuerySelector("a[href='mailto:odalys@ferran.example']"));
        Assert.Equal("/shop/players/new?client=1", page.Document.QuerySelector(".said a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Form_sent_twice_makes_one_client_and_asks_nothing()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/clients/new");
        await owner.Send(form, Odalys);

        var second = await owner.Send(form, Odalys);

        Assert.Equal("/shop/clients/1", second.Location);
        Assert.Null(Store.Get(2));
    }

    [Fact]
    public async Task Same_number_is_asked_about_and_one_tick_makes_a_second_client()
    {
        _shop.Records.Client("Odalys Ferran", "+442079460958");
        var owner = _shop.Owner();

        var asked = await owner.Send(await owner.Open("/shop/clients/new"), ("Input.Name", "Bastian Ferran"), ("Input.Phone", "+44 20 7946 0958"));

        Assert.StartsWith("Odalys Ferran already has this phone number.", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Null(Store.Get(2));
        var tick = asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!;
        await owner.Send(asked, ("Input.Confirmed", tick));
        Assert.Equal("Bastian Ferran", Store.Get(2)!.Name);
    }

    [Theory]
    [InlineData("Input.Name", " ", "Enter the client’s name.")]
    [InlineData("Input.Phone", "12", "This does not look like a phone number. Enter it with its area code, or with + and the country code.")]
    [InlineData("Input.Phone", "ring the club", "This does not look like a phone number. Enter it with its area code, or with + and the country code.")]
    [InlineData("Input.Mail", "odalys at ferran", "Enter an email address like name@example.org.")]
    [InlineData("Input.Language", "Klingon", "Choose a language from the list.")]
    [InlineData("Input.PayerId", "77", "Choose a payer from the list.")]
    public async Task Nonsense_is_refused_at_its_field_and_nothing_typed_is_lost(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/clients/new"), [.. Odalys, ("Input.Note", "comes by bicycle"), (field, typed)]);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal("comes by bicycle", answer.Document.QuerySelector("textarea")!.TextContent);
        Assert.Null(Store.Get(1));
    }

    [Fact]
    public async Task Consent_to_reminders_is_withdrawn_by_taking_the_tick_out()
    {
        var id = _shop.Records.Client("Odalys Ferran");
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"/shop/clients/edit/{id}"), ("Input.Reminders", "false"));

        Assert.False(Store.Get(id)!.Reminders);
    }

    [Theory]
    [InlineData("Input.Phone", "020 7946 0111", "Message|0|0")]
    [InlineData("Input.Phone", "", "Message|0|0")]
    [InlineData("Input.Mail", "odalys@new.example", "Contact|1|0")]
    [InlineData("Input.Note", "comes by bicycle", "Contact|1|1")]
    public async Task What_finders_were_shown_does_not_pass_to_what_the_owner_writes_unasked(string field, string typed, string left)
    {
        var id = _shop.Records.Family().Client;
        _shop.Records.Agree("Contact", always: true, mail: true);
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/clients/edit/{id}"), (field, typed));

        Assert.Equal(left, _shop.Records.Text("SELECT found_choice || '|' || found_always || '|' || found_shows_mail FROM client"));
        Assert.Equal(left != "Contact|1|1", (await owner.Open(answer.Location!)).Main.Contains("until the client agrees", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("UPDATE client SET phone = '+442079460111'", "Message|0|0")]
    [InlineData("UPDATE client SET phone = NULL, mail = 'odalys@new.example'", "Message|0|0")]
    [InlineData("UPDATE client SET phone = '+442079460111', found_choice = 'Shop', found_always = 0, found_shows_mail = 0", "Shop|0|0")]
    [InlineData("UPDATE client SET phone = phone, mail = mail, name = 'O. Ferran'", "Contact|1|1")]
    public void Agreement_to_be_shown_ends_with_the_number_whoever_changes_it(string change, string left)
    {
        _shop.Records.Family();
        _shop.Records.Agree("Contact", always: true, mail: true);

        _shop.Records.Change(change);

        Assert.Equal(left, _shop.Records.Text("SELECT found_choice || '|' || found_always || '|' || found_shows_mail FROM client"));
    }

    [Fact]
    public void Agreement_to_show_a_mail_address_alone_ends_with_the_address()
    {
        _shop.Records.Client("Odalys Ferran", mail: OnFile.CanaryMail);
        _shop.Records.Agree("Contact", mail: true);

        _shop.Records.Change("UPDATE client SET mail = 'odalys@new.example'");

        Assert.Equal("Message|0|0", _shop.Records.Text("SELECT found_choice || '|' || found_always || '|' || found_shows_mail FROM client"));
    }

    [Fact]
    public async Task Second_of_two_people_editing_a_client_is_told()
    {
        var id = _shop.Records.Client("Odalys Ferran");
        var (first, second) = (_shop.Owner(), _shop.Owner());
        var late = await second.Open($"/shop/clients/edit/{id}");
        await first.Send(await first.Open($"/shop/clients/edit/{id}"), ("Input.Name", "Odalys F."));

        var told = await second.Send(late, ("Input.Name", "O. Ferran"));

        Assert.Contains("Somebody else saved this record", told.Main, StringComparison.Ordinal);
        Assert.Equal("Odalys F.", Store.Get(id)!.Name);
    }

    [Fact]
    public async Task Client_page_shows_players_rackets_where_they_stand_and_what_is_unpaid()
    {
        var family = _shop.Records.Family();

        var page = await _shop.Owner().Open($"/shop/clients/{family.Client}");

        Assert.Contains("Pim Ferran, junior", page.Main, StringComparison.Ordinal);
        Assert.Contains("plays twice a week, 1.5 h a time", page.Main, StringComparison.Ordinal);
        Assert.Contains(OnFile.CanaryNote, page.Main, StringComparison.Ordinal);
        Assert.Contains("1 job", page.Main, StringComparison.Ordinal);
        // Polyester: 18 h × (1.25/1.30)² at 3 h a week = 38 days after 1 November, worked out by hand.
        Assert.Contains("9 Dec 2026", page.Document.QuerySelector($"li.racket")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Clients_are_listed_from_A_to_Z_fifty_a_page_without_gap_or_double()
    {
        for (var i = 0; i < 120; i++)
            _shop.Records.Client($"Name {i * 7 % 60:00}");
        var owner = _shop.Owner();
        var seen = new List<string>();

        for (var path = "/shop/clients"; path is not null;)
        {
            var page = await owner.Open(path);
            seen.AddRange(page.Document.QuerySelectorAll("tbody th a").Select(a => a.GetAttribute("href")!));
            path = page.Document.QuerySelector("a[href*='after=']")?.GetAttribute("href");
        }

        Assert.Equal(120, seen.Distinct().Count());
        Assert.Equal(120, seen.Count);
    }

    [Fact]
    public async Task Hostile_names_are_written_as_text()
    {
        const string hostile = "<script>alert(1)</script>\"'";
        var client = _shop.Records.Client(hostile);
        _shop.Records.Racket(_shop.Records.Player(client, hostile), frame: hostile, tapeColour: "\"><b>red");

        foreach (var path in new[] { "/shop/clients", $"/shop/clients/{client}", $"/shop/clients/edit/{client}", "/shop/players/edit/1" })
        {
            var page = await _shop.Owner().Open(path);
            Assert.Equal(HttpStatusCode.OK, page.Status);
            Assert.DoesNotContain("alert(1)", string.Concat(page.Document.Scripts.Select(s => s.Text)), StringComparison.Ordinal);
            Assert.Null(page.Document.QuerySelector("main b"));
            Assert.DoesNotContain("<script>alert", page.Text, StringComparison.Ordinal);
        }
    }
}
