using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>What Odalys reads about Pim's rackets in her own page, and what she says about them.</summary>
public sealed class OwnPageRacketTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _player, _racket, _job;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        (_odalys, _player, _racket, _, _job) = _shop.Records.Family();
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task First_page_shows_each_players_rackets_with_their_dates()
    {
        _shop.Records.Racket(_player, 2, state: "Resting");
        _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_odalys, "Mae Ferran")));

        var page = await _phone.Open("/my");

        Assert.Equal(["Mae", "Pim"], page.Document.QuerySelectorAll("main h2").Select(h => h.TextContent));
        Assert.Equal(3, page.Document.QuerySelectorAll("article").Length);
        Assert.Contains("Restring in ", page.Main, StringComparison.Ordinal);
        Assert.Contains("resting", page.Main, StringComparison.Ordinal);
        Assert.Contains("At the shop, waiting its turn · £24.50", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Rackets_page_shows_string_life_reasons_strings_and_history()
    {
        _shop.Records.Job(_racket, new(2026, 8, 1));

        var page = await _phone.Open($"/my/rackets/{_racket}");

        Assert.Equal("Pim: Racket 1, Pellmore Meadow 98", page.Document.QuerySelector("h1")!.TextContent);
        Assert.NotNull(page.Document.QuerySelector("svg.life"));
        Assert.Contains("3 h a week", page.Document.QuerySelector("details")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("52 lb", page.Document.QuerySelector(".facts")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("1 Aug 2026", page.Document.QuerySelector(".history")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Shops_own_notes_are_not_shown()
    {
        foreach (var address in new[] { "/my", $"/my/rackets/{_racket}" })
            Assert.DoesNotContain("canary", (await _phone.Open(address)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Specs_and_what_was_added_are_shown_with_a_caution_about_lead_and_without_the_shops_note()
    {
        _shop.Records.Change("""
            INSERT INTO spec (racket_id, measured_on, kind, weight, balance, swing_weight, strung, grip_on, dampener_on, note)
            VALUES (@_racket, '2026-10-01', 'Received', 300, 320, 290, 1, 1, 0, 'canary'), (@_racket, '2026-10-02', 'Customised', 304, 324.7, 303.5, 1, 1, 0, 'canary');
            INSERT INTO added_mass (racket_id, place, at, weight, material, added_on) VALUES (@_racket, 'Tip & {day}', 68, 4, 'Lead', '2026-10-02');
            """, new { _racket });

        var specs = (await _phone.Open($"/my/rackets/{_racket}")).Document.QuerySelector("#specs")!;

        Assert.Equal(2, specs.QuerySelectorAll("tbody tr").Length);
        Assert.Contains("Customised, with strings", specs.TextContent, StringComparison.Ordinal);
        Assert.Contains("290 ± 1 kg·cm²", specs.TextContent, StringComparison.Ordinal);
        Assert.Contains("Tip & {day}, lead tape: 4 g, 68 cm from the butt end, since 2 Oct 2026", specs.TextContent, StringComparison.Ordinal);
        Assert.Contains("There is lead on this frame.", specs.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("canary", specs.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Specs_and_pieces_stand_in_the_shops_units_with_what_is_open_about_them()
    {
        _shop.Records.Change("""
            INSERT INTO spec (racket_id, measured_on, weight, balance, swing_weight, length, strung, grip_on, dampener_on) VALUES (@_racket, '2026-10-01', 300, 320, 290, 685, 1, 1, 0);
            INSERT INTO added_mass (racket_id, place, at, weight, material, added_on) VALUES (@_racket, 'Tip', 67.5, 4, 'Tungsten', '2026-10-02');
            UPDATE shop SET customising_values = '{"WeightUnit":1,"BalanceUnit":3,"LengthUnit":2}';
            """, new { _racket });

        var specs = (await _phone.Open($"/my/rackets/{_racket}")).Document.QuerySelector("#specs")!;

        Assert.Equal(["10.582 ± 0.004 oz", "7.1 ± 0.4 points head light", "290 ± 1 kg·cm²"], specs.QuerySelectorAll("td").Select(td => td.TextContent));
        Assert.Contains("Tip, tungsten tape (lead-free): 0.141 oz, 26.57 in from the butt end, since 2 Oct 2026", specs.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Specs_of_another_household_are_not_there()
    {
        var other = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Bastian"), "Bastian"));

        Assert.Equal(HttpStatusCode.NotFound, (await _phone.Get($"/my/rackets/{other}")).StatusCode);
    }

    [Theory]
    [InlineData("Spare", "spare")]
    [InlineData("Resting", "resting")]
    [InlineData("Gone", "gone")]
    public async Task Role_is_set_with_one_press_on_the_rackets_page(string role, string said)
    {
        var page = await _phone.Open($"/my/rackets/{_racket}");

        var answer = await _phone.Send(page, page.Form($"/my/rackets/{_racket}?handler=Role"), ("role", role));

        Assert.Equal($"/my/rackets/{_racket}", answer.Location);
        Assert.Equal(role, _shop.Records.Text("SELECT state FROM racket"));
        Assert.Contains(said, (await _phone.Open(answer.Location!)).Document.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Sold")]
    [InlineData("Damaged")]
    [InlineData("Nonsense")]
    [InlineData("")]
    public async Task Role_that_is_not_the_clients_to_give_changes_nothing(string role)
    {
        var page = await _phone.Open($"/my/rackets/{_racket}");
        var before = _shop.Database.Dump();

        await _phone.Send(page, page.Form($"/my/rackets/{_racket}?handler=Role"), ("role", role));

        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Racket_that_was_sold_keeps_its_history_and_can_only_be_read()
    {
        var old = await _phone.Open($"/my/rackets/{_racket}");
        _shop.Records.Change("UPDATE racket SET state = 'Sold'");
        var before = _shop.Database.Dump();

        var page = await _phone.Open($"/my/rackets/{_racket}");
        Assert.Empty(page.Document.QuerySelectorAll("main form"));
        Assert.Equal(HttpStatusCode.NotFound, (await _phone.Send(old, old.Form($"/my/rackets/{_racket}?handler=Role"), ("role", "InTurn"))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await _phone.Open($"/my/order/{_racket}")).Status);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task How_it_felt_is_seen_at_the_bench_at_the_next_stringing()
    {
        var saved = await _phone.Send(await _phone.Open($"/my/feel/{_job}"), ("Input.Bed", "TooStiff"), ("Input.MoreComfort", "true"), ("Input.MoreSpin", "true"), ("Input.Note", "fine after a week"));
        Assert.Equal($"/my/rackets/{_racket}", saved.Location);
        Assert.Contains("You said: too stiff", (await _phone.Open(saved.Location!)).Main, StringComparison.Ordinal);

        var next = await _shop.Owner().Open($"/shop/jobs/new?racket={_racket}");
        Assert.Contains("too stiff; wants more spin, comfort", next.Main, StringComparison.Ordinal);
        Assert.Contains("fine after a week", next.Main, StringComparison.Ordinal);
        var waiting = _shop.Records.Job(_racket);
        Assert.Contains("too stiff", (await _shop.Owner().Open($"/shop/jobs/{waiting}")).Main, StringComparison.Ordinal);
        Assert.DoesNotContain("too stiff", (await _shop.Owner().Open($"/shop/jobs/{_job}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task How_it_felt_can_be_said_again_and_the_last_word_counts()
    {
        await _phone.Send(await _phone.Open($"/my/feel/{_job}"), ("Input.Bed", "TooStiff"), ("Input.Note", "hm"));
        var page = await _phone.Open($"/my/feel/{_job}");
        Assert.Equal("hm", page.Document.QuerySelector("textarea")!.TextContent.Trim());

        await _phone.Send(page, ("Input.Bed", "Right"), ("Input.Note", ""));

        Assert.Equal("Right|", _shop.Records.Text("SELECT bed || '|' || note FROM feel"));
    }

    [Fact]
    public async Task Nothing_chosen_or_too_long_is_said_and_kept()
    {
        var none = await _phone.Send(await _phone.Open($"/my/feel/{_job}"), ("Input.Note", "kept words"));
        Assert.Contains("Choose how the string bed feels.", none.Errors);
        Assert.Contains("kept words", none.Text, StringComparison.Ordinal);

        var longer = await _phone.Send(await _phone.Open($"/my/feel/{_job}"), ("Input.Bed", "Right"), ("Input.Note", new string('x', 401)));
        Assert.Contains("it has 401", Assert.Single(longer.Errors), StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("feel"));
    }

    [Fact]
    public async Task Strings_that_are_not_in_yet_cannot_be_felt()
    {
        var waiting = _shop.Records.Job(_racket);

        Assert.Equal(HttpStatusCode.NotFound, (await _phone.Open($"/my/feel/{waiting}")).Status);
    }

    [Fact]
    public async Task Label_is_spoken_of_only_where_it_says_another_day()
    {
        Assert.DoesNotContain("The label still says", (await _phone.Open($"/my/rackets/{_racket}")).Main, StringComparison.Ordinal);

        _shop.Records.Change("UPDATE job SET label_date = '2026-12-01'");

        Assert.Contains("The label still says 1 Dec 2026", (await _phone.Open($"/my/rackets/{_racket}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Price_that_somebody_else_pays_is_not_shown()
    {
        _shop.Records.Job(_racket);
        string[] addresses = ["/my", $"/my/rackets/{_racket}"];
        foreach (var address in addresses)
            Assert.Contains("£24.50", (await _phone.Open(address)).Main, StringComparison.Ordinal);

        _shop.Records.Change("INSERT INTO payer (name) VALUES ('Eastmere Academy')");
        _shop.Records.Change("UPDATE client SET payer_id = 1");

        foreach (var address in addresses)
            Assert.DoesNotContain("24.50", (await _phone.Open(address)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task In_Spanish_the_same_page_is_Spanish()
    {
        var page = await _phone.Open($"/my/rackets/{_racket}?lang=es");

        Assert.Equal("es", page.Document.DocumentElement.GetAttribute("lang"));
        Assert.Contains("Pedir un encordado", page.Main, StringComparison.Ordinal);
        Assert.Contains("¿Cómo se usa?", page.Main, StringComparison.Ordinal);
        Assert.All(page.Document.QuerySelectorAll("main a[href^='/my']"), a => Assert.EndsWith("?lang=es", a.GetAttribute("href"), StringComparison.Ordinal));
    }
}
