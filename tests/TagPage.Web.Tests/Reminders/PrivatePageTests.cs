using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Reminders;

/// <summary>What the private page shows, in whose language, and what it does not accept.</summary>
public sealed class PrivatePageTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Household _home;
    private readonly long _reminder;

    public PrivatePageTests()
    {
        _home = new Household(_shop);
        _reminder = _shop.Records.Reminder(_home.Client, _home.Racket);
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Odalys_reads_date_reasons_and_strings_and_no_contact_of_hers()
    {
        var page = await _shop.Stranger().Open(_home.Link(_reminder));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("Pim, racket 1", page.Main, StringComparison.Ordinal);
        Assert.Contains("Heron Spin 1.25", page.Main, StringComparison.Ordinal);
        Assert.Contains("3 h a week", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("7946 0958", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("canary", page.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("SELECT 1", "The same again: 52 / 50 lb · £24.50")]
    [InlineData("INSERT INTO payer (id, name) VALUES (1, 'Eastmere Academy'); UPDATE client SET payer_id = 1", "The same again: 52 / 50 lb")]
    public async Task The_same_again_says_the_tension_and_to_who_pays_the_price(string change, string says)
    {
        _shop.Records.Change(change);

        var page = await _shop.Stranger().Open(_home.Link(_reminder));

        Assert.Contains(page.Document.QuerySelectorAll("label"), label => label.TextContent.Trim() == says);
    }

    [Theory]
    [InlineData("OnMachine", "on the machine")]
    [InlineData("Waiting", "already at the shop")]
    public async Task What_the_bench_has_already_can_no_longer_be_changed(string state, string says)
    {
        var odalys = _shop.Stranger();
        var page = await odalys.Open(_home.Link(_reminder));
        if (state == "OnMachine")
        {
            await odalys.Send(page, ("Input.Rackets[0].Answer", "Same"));
            _shop.Records.Change("UPDATE job SET state = 'OnMachine' WHERE state = 'Waiting'");
        }
        else
            _shop.Records.Job(_home.Racket);
        var before = _shop.Database.Dump();

        var answer = await odalys.Send(page, ("Input.Rackets[0].Answer", "Gone"));

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.NotNull(answer.Document.QuerySelector(".errors"));
        Assert.Equal(before, _shop.Database.Dump());
        Assert.Contains(says, (await odalys.Open(_home.Link(_reminder))).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_that_went_to_another_household_is_no_longer_on_the_page()
    {
        var odalys = _shop.Stranger();
        var page = await odalys.Open(_home.Link(_reminder));
        var other = _shop.Records.Player(_shop.Records.Client("Maren Holt"), "Maren Holt");
        _shop.Records.Change("UPDATE racket SET player_id = @other", new { other });
        var before = _shop.Database.Dump();

        await odalys.Send(page, ("Input.Rackets[0].Answer", "Gone"));

        Assert.Equal(before, _shop.Database.Dump());
        Assert.DoesNotContain("Maren", (await odalys.Open(_home.Link(_reminder))).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-11-24", true)]
    [InlineData("2026-11-25", false)]
    public async Task Strung_since_the_reminder_is_told_by_the_days_of_the_shop(string strung, bool open)
    {
        _shop.Records.Change("UPDATE shop SET time_zone = 'Pacific/Auckland'");
        _shop.Records.Change("UPDATE reminder SET made_at = '2026-11-24T20:00:00.000Z'");
        _shop.Records.Change("UPDATE job SET strung_on = @strung, collected_on = @strung", new { strung });

        var page = await _shop.Stranger().Open(_home.Link(_reminder));

        Assert.Equal(open, page.Document.QuerySelector("[name='Input.Rackets[0].Answer']") is not null);
    }

    [Fact]
    public async Task Neither_links_nor_persons_nor_wishes_reach_a_log_line()
    {
        await _home.Answer(_reminder, "Different", ("Input.Rackets[0].Note", "canaryword"));
        var odalys = _shop.Stranger();
        await odalys.Send(await odalys.Open(_home.StopLink(_reminder)));
        await odalys.Open(_home.Link(_reminder) + "A");

        Assert.Equal("0", _home.Value("SELECT reminders FROM client"));
        foreach (var secret in new[] { _home.Link(_reminder)["/n/".Length..], _home.StopLink(_reminder)["/n/stop/".Length..], "canary", "0958", "Odalys", "Pim Ferran" })
            Assert.DoesNotContain(_shop.Log.All, l => l.Contains(secret, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("", "", "", "Choose an answer for at least one racket.")]
    [InlineData("Different", "", "", "Say what should be different: strings, tension or a note.")]
    [InlineData("NotYet", "0", "", "Enter whole weeks, from 1 to 52.")]
    [InlineData("NotYet", "1.5", "", "Enter whole weeks, from 1 to 52.")]
    [InlineData("Elsewhere", "", "2026-11-26", "Choose the day it was strung: today or earlier.")]
    [InlineData("Elsewhere", "", "2026-09-01", "Choose the day it was strung: today or earlier.")]
    [InlineData("Elsewhere", "", "soon", "Choose the day it was strung: today or earlier.")]
    public async Task What_does_not_fit_is_said_beside_its_field_and_nothing_is_saved(string answer, string weeks, string day, string says)
    {
        var before = _shop.Database.Dump();

        var page = await _home.Answer(_reminder, answer, ("Input.Rackets[0].Weeks", weeks), ("Input.Rackets[0].ElsewhereOn", day));

        Assert.Contains(says, page.Errors);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Of_several_rackets_the_list_of_errors_names_the_one_it_is_about()
    {
        var second = _shop.Records.Racket(_home.Player, number: 2);
        _shop.Records.Job(second, strungOn: new(2026, 9, 1));
        var reminder = _shop.Records.Reminder(_home.Client, _home.Racket);
        _shop.Records.Change("INSERT INTO reminder_racket (reminder_id, racket_id) VALUES (@reminder, @second)", new { reminder, second });
        var odalys = _shop.Stranger();
        var form = await odalys.Open(_home.Link(reminder));

        var page = await odalys.Send(form, ("Input.Rackets[0].Answer", "Different"));

        Assert.Equal("Pim, racket 2: Say what should be different: strings, tension or a note.", page.Document.QuerySelector(".errors li")?.TextContent);
    }

    [Fact]
    public async Task The_page_speaks_the_phones_language_and_keeps_a_chosen_one()
    {
        var odalys = _shop.Stranger();
        var page = await odalys.Open(_home.Link(_reminder) + "?lang=de");

        Assert.Equal("de", page.Document.DocumentElement.GetAttribute("lang"));
        Assert.Contains("Wieder das Gleiche", page.Main, StringComparison.OrdinalIgnoreCase);
        var answer = await odalys.Send(page, ("Input.Rackets[0].Answer", "NotYet"), ("Input.Rackets[0].Weeks", "x"));
        Assert.NotEmpty(answer.Errors);
        Assert.DoesNotContain("Write", answer.Main, StringComparison.Ordinal);
        Assert.EndsWith("?lang=de", (await odalys.Send(page, ("Input.Rackets[0].Answer", "Same"))).Location, StringComparison.Ordinal);
    }
}
