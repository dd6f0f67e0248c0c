using System.Net;
using TagPage.Core.Rackets;
using TagPage.Core.Tags;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Pages;

public sealed class RacketTests : IDisposable
{
    private readonly TestShop _shop = new();

    private RacketStore Store => _shop.Get<RacketStore>();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Next_free_number_is_offered_and_a_racket_added()
    {
        var player = _shop.Records.Player(_shop.Records.Client("Odalys Ferran"), "Pim");
        _shop.Records.Racket(player, 1);
        _shop.Records.Racket(player, 4);
        var owner = _shop.Owner();
        var form = await owner.Open($"/shop/rackets/new?player={player}");
        Assert.Equal("5", form.Document.QuerySelector("[name='Input.Number']")!.GetAttribute("value"));

        var answer = await owner.Send(form,
            ("Input.Frame", "Dunmarrow Causeway 100"), ("Input.TapeColour", "green"), ("Input.PatternMains", "16"), ("Input.PatternCrosses", "19"),
            ("Input.HeadSize", "100"), ("Input.LengthCm", "68,6"), ("Input.Grip", "L2"));

        Assert.Equal("/shop/rackets/3", answer.Location);
        var saved = Store.Get(3)!;
        Assert.Equal((5, RacketState.InTurn, "Dunmarrow Causeway 100", "green"), (saved.Number, saved.State, saved.Frame, saved.TapeColour));
        Assert.Equal((16, 19, 100m, 68.6m, "L2"), (saved.PatternMains, saved.PatternCrosses, saved.HeadSize, saved.LengthCm, saved.Grip));
    }

    [Fact]
    public void Number_is_one_players_own()
    {
        var client = _shop.Records.Client("Odalys Ferran");
        var (pim, bo) = (_shop.Records.Player(client, "Pim"), _shop.Records.Player(client, "Bo"));
        _shop.Records.Racket(pim, 1);
        RacketEntry One() => new() { FormKey = FormKey.New(), Number = 1, Sport = Core.Sports.Sport.Tennis };

        var refused = Assert.IsType<Outcome.Refused>(Store.Add(Who.Shop, pim, One()));
        var done = Store.Add(Who.Shop, bo, One());

        Assert.Equal("Pim already has a racket 1. Choose another number.", ShopRefusals.Of(refused.Why));
        Assert.IsType<Outcome.Done>(done);
    }

    [Theory]
    [InlineData("Input.Number", "0", "Enter a number between 1 and 999.")]
    [InlineData("Input.Sport", "", "Choose the sport.")]
    [InlineData("Input.PatternMains", "7", "Enter 8 to 40 mains.")]
    [InlineData("Input.PatternCrosses", "16x19", "Enter a whole number here, like 16.")]
    [InlineData("Input.LengthCm", "686", "Enter a length between 40 and 80 cm.")]
    [InlineData("Input.HeadSize", "2", "Enter a head size between 20 and 1,500.")]
    [InlineData("Input.HeadSizeUnit", "acres", "Choose in² or cm².")]
    [InlineData("Input.State", "Stolen", "“Stolen” does not fit this field.")]
    public async Task Nonsense_is_refused_at_its_field_and_nothing_typed_is_lost(string field, string typed, string sentence)
    {
        var player = _shop.Records.Player(_shop.Records.Client("Odalys Ferran"), "Pim");
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/rackets/new?player={player}"),
            ("Input.Sport", "Tennis"), ("Input.Frame", "Pellmore Meadow 98"), (field, typed));

        Assert.StartsWith(sentence, Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal("Pellmore Meadow 98", answer.Document.QuerySelector("[name='Input.Frame']")!.GetAttribute("value"));
        Assert.Null(Store.Get(1));
    }

    [Fact]
    public async Task Frame_over_the_sports_limit_is_asked_about_and_kept_when_ticked()
    {
        // ITF Rules of Tennis, Appendix II: at most 73.7 cm long.
        var player = _shop.Records.Player(_shop.Records.Client("Odalys Ferran"), "Pim");
        var owner = _shop.Owner();
        var form = await owner.Open($"/shop/rackets/new?player={player}");

        var asked = await owner.Send(form, ("Input.Sport", "Tennis"), ("Input.LengthCm", "74"), ("Input.Frame", "Pellmore Long"));

        Assert.Contains("74 cm is longer than the 73.7 cm of the ITF Rules of Tennis", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Null(Store.Get(1));
        var tick = asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!;
        var again = await owner.Send(asked, ("Input.Confirmed", tick), ("Input.LengthCm", "76"));
        Assert.Contains("76 cm is longer", Assert.Single(again.Errors), StringComparison.Ordinal);
        await owner.Send(asked, ("Input.Confirmed", tick));
        Assert.Equal((74m, "Pellmore Long"), (Store.Get(1)!.LengthCm, Store.Get(1)!.Frame));
    }

    [Fact]
    public async Task Sold_racket_loses_its_tag_but_not_without_being_asked()
    {
        var family = _shop.Records.Family();
        var owner = _shop.Owner();

        var asked = await owner.Send(await owner.Open($"/shop/rackets/edit/{family.Racket}"), ("Input.State", "Sold"));

        Assert.Equal(TagState.Live, _shop.Get<TagStore>().Get(family.Tag)!.State);
        var tick = asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!;
        await owner.Send(asked, ("Input.Confirmed", tick));
        Assert.Equal(RacketState.Sold, Store.Get(family.Racket)!.State);
        Assert.Equal(TagState.Retired, _shop.Get<TagStore>().Get(family.Tag)!.State);
    }

    [Fact]
    public async Task Second_of_two_people_editing_a_racket_is_told_and_may_then_replace_it()
    {
        var family = _shop.Records.Family();
        var (first, second) = (_shop.Owner(), _shop.Owner());
        var late = await second.Open($"/shop/rackets/edit/{family.Racket}");
        await first.Send(await first.Open($"/shop/rackets/edit/{family.Racket}"), ("Input.Grip", "L3"));

        var told = await second.Send(late, ("Input.Grip", "L1"));

        Assert.Contains("Somebody else saved this record", told.Main, StringComparison.Ordinal);
        Assert.Equal("L3", Store.Get(family.Racket)!.Grip);
        await second.Send(told);
        Assert.Equal("L1", Store.Get(family.Racket)!.Grip);
    }

    [Fact]
    public async Task Card_shows_date_reasons_strings_history_and_tag()
    {
        var family = _shop.Records.Family();

        var card = await _shop.Owner().Open($"/shop/rackets/{family.Racket}");

        // Polyester: 18 h × (1.25/1.30)² = 16.64 h, at 3 h a week 38 days: 9 December. Times a week (2): 182 days.
        Assert.Contains("9 Dec 2026", card.Document.QuerySelector(".big")!.TextContent, StringComparison.Ordinal);
        var limits = card.Document.QuerySelectorAll("[aria-labelledby=restring] tbody tr").Select(r => r.TextContent).ToList();
        Assert.Contains(limits, l => l.Contains("hours played", StringComparison.Ordinal) && l.Contains("decides", StringComparison.Ordinal));
        Assert.Contains(limits, l => l.Contains("2 May 2027", StringComparison.Ordinal) && l.Contains("yes", StringComparison.Ordinal));
        Assert.Contains("52 / 50 lb", card.Document.QuerySelector("[aria-labelledby=in-it]")!.TextContent.Replace("\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("£24.50", card.Document.QuerySelector("[aria-labelledby=history]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(family.Tag.Display, card.Main, StringComparison.Ordinal);
        Assert.NotNull(card.Document.QuerySelector($"a.primary[href='/shop/jobs/new?racket={family.Racket}']"));
        Assert.NotNull(card.Document.QuerySelector("svg.life"));
    }

    [Fact]
    public async Task History_stands_second_on_the_card_and_long_tables_are_folded()
    {
        var family = _shop.Records.Family();
        for (var month = 1; month <= 8; month++)
            _shop.Records.Job(family.Racket, new(2026, month, 1));
        _shop.Records.Reading(family.Job, 62);

        var card = await _shop.Owner().Open($"/shop/rackets/{family.Racket}");

        var sections = card.Document.QuerySelectorAll(".racket-card > *").ToList();
        Assert.NotNull(sections[0].QuerySelector("#restring"));
        Assert.NotNull(sections[0].QuerySelector("#in-it"));
        Assert.Equal("history", sections[1].GetAttribute("aria-labelledby"));
        Assert.Equal(2, card.Document.QuerySelectorAll(".history > table tbody tr:has(th)").Length);
        Assert.Equal("7 earlier jobs", card.Document.QuerySelector(".history details > summary")!.TextContent);
        Assert.All(card.Document.QuerySelectorAll("main table").Where(t => t.ParentElement != sections[1]), t => Assert.Equal("DETAILS", t.ParentElement!.TagName));
    }

    [Fact]
    public async Task Cancelled_ticket_does_not_hide_what_is_in_the_racket()
    {
        var family = _shop.Records.Family();
        var cancelled = _shop.Records.Job(family.Racket, note: "");
        _shop.Records.Change("UPDATE job SET state = 'Cancelled' WHERE id = @cancelled", new { cancelled });
        var waiting = _shop.Records.Job(family.Racket, note: "");

        var card = await _shop.Owner().Open($"/shop/rackets/{family.Racket}");

        Assert.Equal([$"/shop/jobs/{waiting}", $"/shop/jobs/{family.Job}"], card.Document.QuerySelectorAll(".history > table tbody a").Select(a => a.GetAttribute("href")));
        Assert.Equal([$"/shop/jobs/{cancelled}"], card.Document.QuerySelectorAll(".history details a").Select(a => a.GetAttribute("href")));
        Assert.Equal("1 earlier job", card.Document.QuerySelector(".history details > summary")!.TextContent);
    }

    [Fact]
    public async Task Notes_stand_on_card_new_job_ticket_strung_and_bench_the_most_specific_first()
    {
        var family = _shop.Records.Family();
        _shop.Records.Change("UPDATE racket SET note = 'cracked grommet'");
        _shop.Records.Change("UPDATE player SET note = 'arm is healing'");
        _shop.Records.Change("UPDATE client SET note = 'rings the side door'");
        var waiting = _shop.Records.Job(family.Racket, note: "");
        var owner = _shop.Owner();

        foreach (var address in new[] { $"/shop/rackets/{family.Racket}", $"/shop/jobs/new?racket={family.Racket}", $"/shop/jobs/{waiting}", $"/shop/jobs/strung/{waiting}", "/shop" })
        {
            var notes = (await owner.Open(address)).Document.QuerySelector("main dl.notes");
            Assert.True(notes is not null, address);
            Assert.Equal(["cracked grommet", "arm is healing", "rings the side door"], notes.QuerySelectorAll("dd").Select(d => d.TextContent));
            Assert.Equal(["Racket", "Player", "Client"], notes.QuerySelectorAll("dt").Select(d => d.TextContent));
        }
        _shop.Records.Change("UPDATE racket SET note = ''; UPDATE player SET note = ''; UPDATE client SET note = ''");
        Assert.Null((await owner.Open("/shop")).Document.QuerySelector("dl.notes"));
    }

    [Fact]
    public async Task Own_date_with_its_note_decides()
    {
        var family = _shop.Records.Family();
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"/shop/rackets/edit/{family.Racket}"), ("Input.OwnDate", "2026-11-28"), ("Input.OwnDateNote", "county finals"));

        var card = await owner.Open($"/shop/rackets/{family.Racket}");
        Assert.Contains("28 Nov 2026", card.Document.QuerySelector(".big")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("county finals", card.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1900-01-01")]
    [InlineData("2999-12-31")]
    public async Task Own_date_with_a_slip_in_the_year_is_refused(string typed)
    {
        var family = _shop.Records.Family();
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/rackets/edit/{family.Racket}"), ("Input.OwnDate", typed));

        Assert.Equal("Check the year.", Assert.Single(answer.Errors));
        Assert.Null(Store.Get(family.Racket)!.OwnDate);
    }

    [Fact]
    public async Task Hostile_text_is_written_as_text()
    {
        const string hostile = "<img src=x onerror=alert(1)>";
        var racket = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client(hostile), hostile), frame: hostile, tapeColour: "\"><b>red");
        _shop.Records.Job(racket, strungOn: new(2026, 11, 1), note: hostile);

        var card = await _shop.Owner().Open($"/shop/rackets/{racket}");

        Assert.Equal(HttpStatusCode.OK, card.Status);
        Assert.Null(card.Document.QuerySelector("main img, main b, main script"));
        Assert.Contains(hostile, card.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/shop/rackets/99")]
    [InlineData("/shop/rackets/edit/99")]
    [InlineData("/shop/rackets/new?player=99")]
    [InlineData("/shop/rackets/spec/99")]
    [InlineData("/shop/rackets/spec/1/99")]
    [InlineData("/shop/rackets/hand-over/99")]
    [InlineData("/shop/tags/new?racket=99")]
    [InlineData("/shop/tags/replace/7K2M9Q4TXAV")]
    [InlineData("/shop/tags/link/7K2M9Q4TXAV")]
    [InlineData("/shop/tags/7K2M9Q4TXAV/qr.svg")]
    [InlineData("/shop/tags/nonsense/qr.png")]
    public async Task Unknown_records_are_not_found(string path) =>
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get(path)).StatusCode);
}
