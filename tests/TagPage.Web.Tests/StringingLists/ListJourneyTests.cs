using System.Net;
using System.Text;
using TagPage.Records.StringingLists;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.StringingLists;

/// <summary>The owner's way from an old list to jobs on file, and back, without JavaScript.</summary>
public sealed class ListJourneyTests : IDisposable
{
    private readonly TestShop _shop = new();

    public ListJourneyTests() => ImportedShop.SetUp(_shop);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_answers_what_is_asked_brings_a_list_in_once_and_takes_it_back()
    {
        var owner = _shop.Owner();
        var list = Encoding.Latin1.GetBytes("Kunde;Schläger;Datum;Saite;Spannung;Bemerkung\r\nZoë Quill;Pellmore Meadow;01/02/2025;Heron Spin;52/50;rot\r\nZoë Quill;Pellmore Meadow;01/02/2025;Heron Spin;?;\r\nIvo;;never;Heron Spin;52;\r\n");

        var columns = await owner.Open((await OldLists.Send(owner, list)).Location!);
        Assert.Contains("It was read as Windows-1252", columns.Main, StringComparison.Ordinal);
        Assert.Contains("Zoë Quill", columns.Main, StringComparison.Ordinal);
        var asked = await owner.Send(columns, ("Input.Sport", "Tennis"));
        Assert.Equal("Say in which order the list writes days: 01/02/2025 may be 1 Feb 2025 or 2 Jan 2025.", Assert.Single(asked.Errors));
        var check = await owner.Open((await owner.Send(asked, ("Input.Days", "DayMonthYear"), ("Input.TensionUnknown", "51"))).Location!);
        Assert.Equal("Some questions first", check.Document.QuerySelector("h1")!.TextContent);
        var open = await owner.Send(check);
        Assert.Equal(["Say what “Heron Spin” is: a string of the catalogue, or material and gauge (0.5 to 1.6 mm).", "Say how many rackets these lines of Zoë Quill are."], open.Document.QuerySelectorAll(".errors li").Select(e => e.TextContent));
        Assert.Equal(0, _shop.Records.Count("client"));

        (string, string)[] answers = [("string-0-material", "Polyester"), ("string-0-gauge", "1,25"), ("racket-0", "several")];
        var done = await owner.Send(open, answers);
        var again = await owner.Send(open, answers);
        Assert.Equal(done.Location, again.Location);
        _shop.Get<StringingListWorker>().Round();

        var page = await owner.Open(done.Location!);
        Assert.Equal("The list is in", page.Document.QuerySelector("h1")!.TextContent);
        Assert.Equal("Pellmore Meadow 1: 52.0/50.0, Pellmore Meadow 2: 51.0/51.0", _shop.Records.Text("SELECT group_concat(r.frame || ' ' || r.number || ': ' || j.mains_tension || '/' || j.crosses_tension, ', ' ORDER BY j.id) FROM job j JOIN racket r ON r.id = j.racket_id"));
        Assert.Equal((1, 2), (_shop.Records.Count("client"), _shop.Records.Count("job")));

        await owner.Send(page);
        _shop.Get<StringingListWorker>().Round();
        Assert.Equal("The list was taken back", (await owner.Open(done.Location!)).Document.QuerySelector("h1")!.TextContent);
        Assert.Equal((0, 0, 0), (_shop.Records.Count("client"), _shop.Records.Count("job"), _shop.Records.Count("string_kind")));
    }

    [Fact]
    public async Task Columns_are_remembered_for_the_next_list_with_the_same_headings()
    {
        var owner = _shop.Owner();
        var columns = await owner.Open((await OldLists.Send(owner, "Wer;Wann\nTamsin Quill;2025-03-14")).Location!);
        Assert.Contains("Say which column holds the client.", (await owner.Send(columns, ("Input.Sport", "Squash"))).Main, StringComparison.Ordinal);
        var check = await owner.Open((await owner.Send(columns, ("Input.Columns[0]", "Client"), ("Input.Columns[1]", "Day"), ("Input.Sport", "Squash"), ("Input.TensionUnknown", "25"))).Location!);
        Assert.StartsWith("/shop/import/list/", (await owner.Send(check, ("string-0-material", "Multifilament"), ("string-0-gauge", "1.2"))).Location, StringComparison.Ordinal);

        var next = await owner.Open((await OldLists.Send(owner, "wer;WANN\nOdalys Ferran;2025-03-14")).Location!);

        Assert.Equal(["Client", "Day"], next.Document.QuerySelectorAll("select[name^='Input.Columns'] option[selected]").Select(o => o.GetAttribute("value")));
    }

    [Fact]
    public async Task Refused_lines_can_be_taken_home_with_their_reasons()
    {
        var owner = _shop.Owner();
        var columns = await owner.Open((await OldLists.Send(owner, OldLists.List("Tamsin;Meadow;2025-03-14;Heron;52", "=cmd;Meadow;never;Heron;52"))).Location!);
        var check = await owner.Send(columns, ("Input.Sport", "Tennis"));

        var file = await owner.Open(check.Location!.Replace("/check/", "/refused/", StringComparison.Ordinal));

        Assert.Equal("Client,Racket,Date,String,Tension,refused because\r\n'=cmd,Meadow,never,Heron,52,“never” is no day that can be told for sure.\r\n", file.Text);
    }

    [Fact]
    public async Task Client_who_may_be_on_file_is_decided_on_the_page()
    {
        _shop.Records.Kind();
        var client = _shop.Records.Client("Tamsin Quill");
        var owner = _shop.Owner();
        var columns = await owner.Open((await OldLists.Send(owner, OldLists.List("Tamsin Quill;Meadow;2025-03-14;Heron Spin 1.25;52"))).Location!);
        var check = await owner.Open((await owner.Send(columns, ("Input.Sport", "Tennis"))).Location!);
        Assert.Equal("Say who Tamsin Quill is.", (await owner.Send(check)).Document.QuerySelector(".errors li")!.TextContent);

        await owner.Send(check, ("match-2", $"client{client}"));
        _shop.Get<StringingListWorker>().Round();

        Assert.Equal((1, 1), (_shop.Records.Count("client"), _shop.Records.Count("job")));
    }

    [Fact]
    public async Task Workbook_is_refused_with_what_to_do()
    {
        var answer = await OldLists.Send(_shop.Owner(), "PK\u0003\u0004"u8.ToArray());

        Assert.StartsWith("This is a workbook or an archive.", Assert.Single(answer.Errors), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/shop/import/list/columns/0123456789abcdef0123456789abcdef")]
    [InlineData("/shop/import/list/check/keys")]
    [InlineData("/shop/import/list/refused/..%2Fkeys")]
    [InlineData("/shop/import/list/7")]
    public async Task Lists_that_are_not_there_are_not_found(string path) => Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get(path)).StatusCode);
}
