using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Pages.Desk;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A day at the desk over HTTP: Runa owns the shop, a helper has a tablet.</summary>
public sealed class DeskTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_sets_an_event_up_and_a_helper_joins_by_the_square()
    {
        _shop.Records.Shop();
        var runa = _shop.Owner();
        var made = await runa.Send(await runa.Open("/shop/events/new"), ("Input.Name", "Harbour Open"), ("Input.PriceOwn", "12"));
        var page = await runa.Open(made.Location!);
        await runa.Send(page, ("Input.Name", "Runa"), ("Input.Machine", "Table"), ("Input.Hours", "9-12, 13-19"));

        page = await runa.Open(made.Location!);
        Assert.Contains("9:00–12:00, 13:00–19:00", page.Main, StringComparison.Ordinal);
        Assert.NotNull(page.Document.QuerySelector("svg[aria-label='QR code that joins the desk']"));

        var desk = _shop.Get<EventStore>().Get(Who.Shop, 1)!;
        var tablet = _shop.Stranger();
        var joined = await tablet.Send(await tablet.Open("/desk/enter/" + _shop.Get<EventSessionStore>().Token(desk)));
        Assert.Contains("Harbour Open", (await tablet.Open(joined.Location!)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_goes_from_the_queue_to_its_player()
    {
        var fair = new Fairground(_shop);
        var kind = _shop.Records.Kind();
        var tablet = await fair.Tablet();
        var taken = await tablet.Send(await tablet.Open(fair.Home + "/in/visitor"),
            ("Input.Visitor.Name", "Tove Alling"), ("Input.MainsTension", "52"), ("Input.MainsId", $"{kind}"), ("Input.NeededAt", "12:30"), ("Input.Team", "Norden"));
        Assert.Contains("Number 1: promised for 12:30", (await tablet.Open(taken.Location!)).Main, StringComparison.Ordinal);

        var mine = await tablet.Open($"{fair.Home}/technician/{fair.Runa}");
        Assert.Contains("My next racket", mine.Main, StringComparison.Ordinal);
        await Fairground.Press(tablet, mine, "Take number 1");
        _shop.Clock.Advance(TimeSpan.FromMinutes(22));
        var strung = await Fairground.Press(tablet, await tablet.Open($"{fair.Home}/technician/{fair.Runa}"), "Strung, and print the pair");
        var labels = await tablet.Get(strung.Location!);
        Assert.Equal((HttpStatusCode.OK, "application/pdf"), (labels.StatusCode, labels.Content.Headers.ContentType?.MediaType));

        var found = await tablet.Get(fair.Home + "/out?q=1");
        var racket = await tablet.Open(found.Headers.Location!.ToString());
        Assert.Contains("not paid £12.00", racket.Main.Trim().ReplaceLineEndings(" "), StringComparison.Ordinal);
        await Fairground.Press(tablet, racket, "Handed out on account, not paid yet");

        Assert.Equal(1, _shop.Records.Count("job", "state = 'Collected' AND strung_on = '2026-11-25' AND paid_on IS NULL AND strung_by = 'Runa'"));
        var sheet = await _shop.Owner().Open($"/shop/events/day/{fair.Id}");
        Assert.Contains("1, 1 strung", sheet.Main, StringComparison.Ordinal);
        Assert.Contains("£12.00, of which £12.00 not paid", sheet.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Scanned_tag_leads_to_the_form_filled_in_from_the_last_ticket_and_one_press_takes_it_in()
    {
        var fair = new Fairground(_shop);
        var family = _shop.Records.Family();
        var tablet = await fair.Tablet();

        var led = await tablet.Get($"{fair.Home}/in?q={family.Tag}");
        var form = await tablet.Open(led.Headers.Location!.ToString());
        Assert.Equal("52", form.Document.QuerySelector<IHtmlInputElement>("[name='Input.MainsTension']")!.Value);
        await tablet.Send(form);

        Assert.Equal((1, family.Racket), (fair.Board.Entries.Single().Number, fair.Board.Entries.Single().RacketId));
    }

    [Fact]
    public async Task Second_racket_of_a_visitor_is_theirs_and_asked_for_as_the_first()
    {
        var fair = new Fairground(_shop);
        var kind = _shop.Records.Kind();
        var tablet = await fair.Tablet();
        var taken = await tablet.Send(await tablet.Open(fair.Home + "/in/visitor"),
            ("Input.Visitor.Name", "Tove Alling"), ("Input.MainsTension", "52"), ("Input.MainsId", $"{kind}"), ("Input.Team", "Norden"));
        var said = await tablet.Open(taken.Location!);

        var another = await tablet.Open(said.Document.QuerySelector(".said a")!.GetAttribute("href")!);
        Assert.Contains("Tove Alling, racket 2", another.Main, StringComparison.Ordinal);
        await tablet.Send(another, ("Input.Frame", "Pellmore Meadow 98"));

        Assert.Equal([(1, "Norden", 52m), (2, "Norden", 52m)], fair.Board.Entries.Select(entry => (entry.RacketNumber, entry.Team, entry.MainsTension)));
        Assert.Equal(1, _shop.Records.Count("client"));
    }

    [Fact]
    public async Task Helper_takes_in_a_players_own_string_that_is_not_on_the_list()
    {
        var fair = new Fairground(_shop);
        var tablet = await fair.Tablet();
        (string, string)[] tove = [("Input.Visitor.Name", "Tove Alling"), ("Input.MainsTension", "52"), ("Input.NewString.Name", "Marram")];

        var asked = await tablet.Send(await tablet.Open(fair.Home + "/in/visitor"), tove);
        Assert.Contains("Choose what the new string is made of.", asked.Errors);
        await tablet.Send(asked, ("Input.NewString.Material", "Aramid"), ("Input.NewString.GaugeMm", "1.2"));

        Assert.Equal(("Marram", "Marram"), (Assert.Single(fair.Board.Entries).MainsName, fair.Board.Of(1)!.CrossesName));
        Assert.Equal(1, _shop.Records.Count("string_kind", "name = 'Marram' AND material = 'Aramid'"));
    }

    [Fact]
    public async Task Of_two_tablets_that_take_the_same_racket_the_second_is_told_who_has_it()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn();
        var (one, other) = (await fair.Tablet(), await fair.Tablet());
        var (first, second) = (await one.Open(fair.Home + "/entry/1"), await other.Open(fair.Home + "/entry/1"));

        await Fairground.Press(one, first, "Runa takes it");
        var told = await Fairground.Press(other, second, "Bram takes it");

        Assert.Contains("Somebody was quicker: Runa has number 1 on the machine.", told.Main, StringComparison.Ordinal);
        Assert.Equal(fair.Runa, fair.Board.Of(1)!.TechnicianId);
    }

    [Fact]
    public async Task Board_shows_numbers_and_no_names()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn("Pim Ferran", junior: true, Fairground.At(10, 20));
        fair.TakeIn("Tove Alling");
        for (var more = 0; more < BoardModel.Most; more++)
            fair.TakeIn("Tove Alling", neededBy: Fairground.At(10, 20));

        var board = await (await fair.Tablet()).Open(fair.Home + "/board");

        Assert.Contains("1", board.Document.QuerySelector("[aria-labelledby=risk]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("late", board.Document.QuerySelector("[aria-labelledby=risk]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("and 1 more", board.Document.QuerySelector("[aria-labelledby=risk]")!.TextContent, StringComparison.Ordinal);
        foreach (var name in (string[])["Pim", "Ferran", "Tove", "Norden"])
            Assert.DoesNotContain(name, board.Text, StringComparison.Ordinal);
        Assert.NotNull(board.Document.QuerySelector("noscript"));
        Assert.Contains("http-equiv=\"refresh\"", board.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Juniors_name_stands_on_no_page_of_the_desk()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn("Pim Ferran", junior: true);
        var tablet = await fair.Tablet();

        foreach (var path in new[] { "", "/board", "/entry/1", "/out", "/sheet", $"/technician/{fair.Runa}" })
            Assert.DoesNotContain("Pim", (await tablet.Open(fair.Home + path)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Juniors_name_stands_on_no_page_where_a_helper_takes_in_and_the_owner_reads_it()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn("Pim Ferran", junior: true);
        var (tablet, runa) = (await fair.Tablet(), _shop.Owner());
        var (player, racket) = (fair.Board.Of(1)!.PlayerId, fair.Board.Of(1)!.RacketId);

        var found = Found(await tablet.Open(fair.Home + "/in?q=Pim"));
        Assert.Contains("Player of number 1, racket 1: at the desk already, number 1", found, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", found, StringComparison.Ordinal);
        Assert.Contains("Pim Ferran, racket 1", Found(await runa.Open(fair.Home + "/in?q=Pim")), StringComparison.Ordinal);
        foreach (var path in new[] { $"/in/player/{player}", $"/in/racket/{racket}" })
        {
            Assert.DoesNotContain("Pim", (await tablet.Open(fair.Home + path)).Text, StringComparison.Ordinal);
            Assert.Contains("Pim Ferran", (await runa.Open(fair.Home + path)).Main, StringComparison.Ordinal);
        }
        _shop.Records.Change("UPDATE player SET label_name = 'Pimmy' WHERE name = 'Pim Ferran'");
        Assert.Contains("Pimmy, racket 2", (await tablet.Open($"{fair.Home}/in/player/{player}")).Main, StringComparison.Ordinal);
    }

    private static string Found(WebPage page) => page.Document.QuerySelector("[aria-labelledby=found]")!.TextContent;

    [Fact]
    public async Task Ticket_that_is_moved_at_the_shops_bench_is_moved_at_the_desk()
    {
        var fair = new Fairground(_shop);
        fair.TakeIn();
        var job = fair.Board.Of(1)!.JobId;
        var runa = _shop.Owner();
        await runa.Send(await runa.Open($"/shop/jobs/start/{job}"));

        Assert.Contains("Put on a machine at the shop’s bench", (await runa.Open(fair.Home)).Main, StringComparison.Ordinal);

        await runa.Send(await runa.Open($"/shop/jobs/strung/{job}"));
        Assert.Contains("1, 1 strung", (await runa.Open($"/shop/events/day/{fair.Id}")).Main, StringComparison.Ordinal);
        await runa.Send(await runa.Open($"/shop/jobs/back/{job}"));
        Assert.Contains("1, 0 strung", (await runa.Open($"/shop/events/day/{fair.Id}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Typed_time_that_is_none_and_a_tension_no_machine_pulls_are_asked_for_again()
    {
        var fair = new Fairground(_shop);
        var tablet = await fair.Tablet();

        var page = await tablet.Send(await tablet.Open(fair.Home + "/in/visitor"), ("Input.Visitor.Name", "Tove"), ("Input.MainsTension", "520"), ("Input.NeededAt", "25:10"));

        Assert.Contains("Enter a time like 14:30.", page.Errors);
        Assert.Contains(page.Errors, error => error.StartsWith("No machine pulls that", StringComparison.Ordinal));
        Assert.Empty(fair.Board.Entries);
    }

    [Fact]
    public async Task Technicians_hours_until_midnight_can_be_saved_as_they_are_shown()
    {
        var fair = new Fairground(_shop);
        var runa = _shop.Owner();
        var address = $"/shop/events/{fair.Id}/technician/{fair.Runa}";
        await runa.Send(await runa.Open(address), ("Input.Hours", "0-24"));

        var saved = await runa.Send(await runa.Open(address));

        Assert.Empty(saved.Errors);
        Assert.Equal(24, fair.Board.Technician(fair.Runa)!.Hours.Sum(time => (time.To - time.From).TotalHours));
    }

    [Fact]
    public async Task Day_of_the_event_on_which_somebody_strings_at_other_hours_is_said_on_its_own()
    {
        _shop.Records.Shop();
        var runa = _shop.Owner();
        var made = await runa.Send(await runa.Open("/shop/events/new"), ("Input.Name", "Island Cup"), ("Input.ToOn", "2026-11-26"));
        var asked = await runa.Send(await runa.Open(made.Location!), ("Input.Name", "Runa"), ("Input.Hours", "9-17"), ("Input.Days[1].Hours", "noon"));
        Assert.Contains("Enter times like 9:00-12:30, 13:00-18:00, or off for a day off.", asked.Errors);

        await runa.Send(asked, ("Input.Days[1].Hours", "12-20"));
        Assert.Contains("25 Nov 2026 9:00–17:00", (await runa.Open(made.Location!)).Main, StringComparison.Ordinal);
        var form = await runa.Open(made.Location + "/technician/1");
        await runa.Send(form);
        var saved = (await runa.Open(made.Location!)).Main;
        Assert.Contains("26 Nov 2026 12:00–20:00", saved, StringComparison.Ordinal);
        await runa.Send(form, ("Input.Days[1].Hours", "off"));
        Assert.Contains("26 Nov 2026 off", (await runa.Open(made.Location!)).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/entry/1?handler=out", "how", "perhaps")]
    [InlineData("/entry/1?handler=out", "how", "7")]
    [InlineData("/entry/1?handler=out", "paid", "true")]
    [InlineData("?handler=away&technician=1", "away", "perhaps")]
    public async Task Press_with_an_answer_that_is_none_changes_nothing(string path, string field, string value)
    {
        var fair = new Fairground(_shop);
        fair.TakeIn();
        Fairground.Done(_shop.Get<DeskMoveStore>().Take(Who.Shop, fair.Id, 1, fair.Bram));
        Fairground.Done(_shop.Get<DeskMoveStore>().Strung(Who.Shop, fair.Id, 1));
        Fairground.Done(_shop.Get<TechnicianStore>().SetAway(Who.Shop, fair.Id, fair.Runa, true));
        var tablet = await fair.Tablet();
        var page = await tablet.Open(fair.Home);
        var form = (IHtmlFormElement)page.Document.QuerySelector("main form[method=post]")!;
        form.SetAttribute("action", fair.Home + path);
        var before = _shop.Database.Dump();

        var answer = await tablet.Post(page, form, (field, value));

        Assert.Equal(HttpStatusCode.NotFound, answer.Status);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Closed_event_is_gone_from_the_tablet_and_stays_with_the_owner()
    {
        var fair = new Fairground(_shop);
        var tablet = await fair.Tablet();
        var runa = _shop.Owner();
        await Fairground.Press(runa, await runa.Open($"/shop/events/{fair.Id}"), "Close the event");

        Assert.StartsWith("/account/sign-in", (await tablet.Get(fair.Home)).Headers.Location?.ToString(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await runa.Get(fair.Home)).StatusCode);
    }
}
