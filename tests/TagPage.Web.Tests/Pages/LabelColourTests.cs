using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Tape and ink of a label, and what cannot be read on it.</summary>
public sealed class LabelColourTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly (long Client, long Player, long Racket, Core.Tags.TagCode Tag, long Job) _family;

    public LabelColourTests() => _family = _shop.Records.Family();

    private string Page => $"/shop/labels/racket/{_family.Racket}";

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Tape_ink_and_own_line_are_kept_for_the_next_label_and_a_preview_keeps_nothing()
    {
        var owner = _shop.Owner();
        (string, string)[] typed = [("Input.TapeColour", "yellow"), ("Input.InkColour", "blue"), ("Input.OwnLine", "go low")];
        var before = _shop.Database.Dump();

        var shown = await owner.Send(await owner.Open(Page), [.. typed, ("Preview", "true")]);
        Assert.Contains("go low", Words(shown), StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());

        await owner.Send(await owner.Open(Page), typed);
        Assert.Equal("yellow blue go low", _shop.Records.Text("SELECT label_tape || ' ' || label_ink || ' ' || label_line FROM racket"));
    }

    [Fact]
    public async Task Racket_that_is_marked_black_gets_its_label_on_the_usual_tape_until_the_owner_says_otherwise()
    {
        _shop.Records.Change("UPDATE racket SET tape_colour = 'black'");
        var owner = _shop.Owner();

        var form = await owner.Open(Page);
        Assert.Equal(("#FFFFFF", "#000000"), Colours(form));
        Assert.DoesNotContain("the code is printed instead", form.Main, StringComparison.Ordinal);
        await owner.Send(form);
        Assert.Equal("black", _shop.Records.Text("SELECT tape_colour || label_tape FROM racket"));

        await owner.Send(form, ("Input.TapeColour", "yellow"), ("Input.MarksRacket", "true"));
        Assert.Equal("yellow yellow", _shop.Records.Text("SELECT tape_colour || ' ' || label_tape FROM racket"));
    }

    [Fact]
    public async Task Ink_follows_the_tape_and_what_cannot_be_read_is_not_printed()
    {
        var owner = _shop.Owner();
        var followed = await owner.Send(await owner.Open(Page), ("Input.TapeColour", "black"), ("Preview", "true"));
        Assert.Equal(("#1A1A1A", "#FFFFFF"), Colours(followed));
        var before = _shop.Database.Dump();

        foreach (var (page, more) in new (string, (string, string)[])[] { (Page, []), ("/shop/labels/free", [("Input.First", "Good luck")]), ("/shop/labels/desk", [("Input.Number", "1"), ("Input.Tension", "24 lb")]) })
        {
            var refused = await owner.Send(await owner.Open(page), [.. more, ("Input.TapeColour", "black"), ("Input.InkColour", "black")]);
            Assert.Contains("With black ink on black tape nothing can be read", Assert.Single(refused.Errors), StringComparison.Ordinal);
        }
        var settings = await owner.Send(await owner.Open("/shop/labels/settings"), ("Input.TapeColour", "black"), ("Input.InkColour", "black"));
        Assert.Contains("nothing can be read", Assert.Single(settings.Errors), StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Label_kept_in_colours_that_cannot_be_read_is_named_and_not_printed()
    {
        _shop.Records.Job(_family.Racket, strungOn: TestShop.Today);
        _shop.Records.Change("UPDATE racket SET label_tape = 'black', label_ink = 'black'");
        var owner = _shop.Owner();

        Assert.Contains("nothing can be read", (await owner.Open("/shop/labels/today")).Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get("/shop/labels/today?handler=pdf")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get(Page + "?handler=pdf")).StatusCode);
    }

    [Fact]
    public async Task Width_and_clear_tape_are_chosen_for_one_label()
    {
        var owner = _shop.Owner();
        var shown = await owner.Send(await owner.Open(Page), ("Input.TapeMm", "24"), ("Input.TapeColour", "clear on light"), ("Preview", "true"));

        Assert.Equal("24mm", shown.Document.QuerySelector(".label-preview svg")!.GetAttribute("height"));
        Assert.Contains("The frame shows through clear tape", shown.Main, StringComparison.Ordinal);
        var refused = await owner.Send(await owner.Open(Page), ("Input.TapeColour", "clear on light"), ("Input.MarksRacket", "true"));
        Assert.Contains("Clear tape has no colour", Assert.Single(refused.Errors), StringComparison.Ordinal);
        Assert.Contains("TapeMm=24", (await owner.Send(await owner.Open(Page), ("Input.TapeMm", "24"))).Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Usual_ink_suits_the_tape_until_one_is_chosen()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/labels/settings");
        var ink = form.Document.QuerySelector("#Input_InkColour")!;
        Assert.Equal("to suit the tape", ink.QuerySelector("option[selected]")!.TextContent);

        var saved = await owner.Send(form, ("Input.TapeColour", "black"));

        Assert.Empty(saved.Errors);
        Assert.Equal("black, ", _shop.Records.Text("SELECT (settings ->> 'TapeColour') || ', ' || (settings ->> 'InkColour') FROM label_setting"));
    }

    [Fact]
    public async Task Light_ink_on_dark_tape_prints_the_code_and_says_why()
    {
        var owner = _shop.Owner();

        var shown = await owner.Send(await owner.Open(Page), ("Input.TapeColour", "black"), ("Input.InkColour", "white"), ("Preview", "true"));

        Assert.Contains("many phones read only dark on light", shown.Main, StringComparison.Ordinal);
        Assert.Contains($"tag.example/t/{_family.Tag.Display}", Words(shown), StringComparison.Ordinal);
    }

    private static (string? Tape, string? Ink) Colours(WebPage page) => (
        page.Document.QuerySelector(".label-preview svg > path")!.GetAttribute("fill"),
        page.Document.QuerySelector(".label-preview svg > g")!.GetAttribute("fill"));

    private static string Words(WebPage page) => string.Join('\n', page.Document.QuerySelectorAll(".label-preview title").Select(t => t.TextContent));

    [Theory]
    [InlineData("go 🎾", "Labels have no letters for 🎾. Leave it out.")]
    [InlineData("화이팅", "Labels have no letters for 화 이 팅. Leave them out.")]
    public async Task Letters_that_no_label_has_are_told_at_the_field_and_nothing_is_printed(string line, string sentence)
    {
        var owner = _shop.Owner();
        foreach (var (page, field) in new[] { (Page, "Input.OwnLine"), ("/shop/labels/free", "Input.First"), ("/shop/labels/settings", "Input.ReturnWords") })
        {
            var refused = await owner.Send(await owner.Open(page), (field, line));

            Assert.Equal(sentence, Assert.Single(refused.Errors));
            Assert.NotNull(refused.Document.QuerySelector($"[name='{field}'][aria-invalid]"));
        }
        Assert.Equal(0, _shop.Records.Count("racket", "label_line <> ''"));
        Assert.Equal(0, _shop.Records.Count("label_setting"));
    }
}
