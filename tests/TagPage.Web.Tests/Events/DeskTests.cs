using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A day at the desk over HTTP: Runa owns the shop, a helper has a tablet.</summary>
public sealed class DeskTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

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
}
