using System.Net;
using Dapper;
using TagPage.Core.Tags;
using TagPage.Records.Rackets;
using TagPage.Records.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class FirstVisitTests : IDisposable
{
    private static readonly (string, string)[] Visit =
    [
        ("Input.Name", "Odalys Ferran"), ("Input.Phone", "020 7946 0958"), ("Input.PlayerName", "Pim"), ("Input.Junior", "true"),
        ("Input.TimesAWeek", "2"), ("Input.HoursATime", "1,5"), ("Input.Sport", "Tennis"), ("Input.Frame", "Pellmore Meadow 98"),
        ("Input.PatternMains", "16"), ("Input.PatternCrosses", "19"), ("Input.TapeColour", "red"),
    ];

    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Client_player_racket_and_tag_come_on_file_in_one_go()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/clients/first-visit");

        var answer = await owner.Send(form, Visit);
        var second = await owner.Send(form, Visit);

        Assert.Equal(("/shop/rackets/1", "/shop/rackets/1"), (answer.Location, second.Location));
        Assert.Equal((1, 1, 1, 1), Counts());
        var racket = _shop.Get<RacketStore>().Get(1)!;
        Assert.Equal(("Odalys Ferran", "Pim", 1, true), (racket.ClientName, racket.PlayerName, racket.Number, racket.IsTagged));
        var card = await owner.Open("/shop/rackets/1");
        Assert.Equal("/shop/jobs/new?racket=1", card.Document.QuerySelector(".said a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Client_can_be_the_player_and_a_blank_tag_be_linked_however_its_code_is_typed()
    {
        var blank = _shop.Records.BlankTag();
        var owner = _shop.Owner();

        await owner.Send(await owner.Open("/shop/clients/first-visit"),
            [.. Visit, ("Input.ClientPlays", "true"), ("Input.PlayerName", ""), ("Input.Tag", "Blank"), ("Input.BlankCode", blank.Display.ToLowerInvariant())]);

        Assert.Equal("Odalys Ferran", _shop.Get<RacketStore>().Get(1)!.PlayerName);
        Assert.Equal((TagState.Live, 1L), (_shop.Get<TagStore>().Get(blank)!.State, _shop.Get<TagStore>().Get(blank)!.RacketId));
    }

    [Theory]
    [InlineData("Input.Name", "", "Enter the client’s name.")]
    [InlineData("Input.PlayerName", "", "Enter the player’s name, or tick that the client plays.")]
    [InlineData("Input.Phone", "12", "This does not look like a phone number. Enter it with its area code, or with + and the country code.")]
    [InlineData("Input.Sport", "", "Choose the sport.")]
    [InlineData("Input.PatternMains", "4", "Enter 8 to 40 mains.")]
    [InlineData("Input.BlankCode", "", "Scan or type the code of the blank tag.")]
    [InlineData("Input.BlankCode", "7K2M-9Q4T-XAW", "Check the tag again: one character is different there.")]
    [InlineData("Input.BlankCode", "7K2M-9Q4T-XAV", "There is no tag with this code. Compare each character with the tag.")]
    [InlineData("Input.BlankCode", "hello", "A code has eleven letters and digits, for example 7K2M-9Q4T-XAV.")]
    public async Task One_wrong_field_saves_nothing_and_loses_nothing(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();
        var tag = field == "Input.BlankCode" ? "Blank" : "New";

        var answer = await owner.Send(await owner.Open("/shop/clients/first-visit"), [.. Visit, ("Input.Tag", tag), (field, typed)]);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(sentence, Assert.Single(answer.Document.QuerySelectorAll(".errors li")).TextContent);
        Assert.Equal("Pellmore Meadow 98", answer.Document.QuerySelector("[name='Input.Frame']")!.GetAttribute("value"));
        Assert.True(answer.Document.QuerySelector("#Input_Junior")!.HasAttribute("checked"));
        Assert.Equal((0, 0, 0, 0), Counts());
    }

    [Fact]
    public async Task Empty_form_names_all_that_is_missing_at_once()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/clients/first-visit"), ("Input.Tag", "Blank"));

        Assert.Equal(
            ["Enter the client’s name.", "Enter the player’s name, or tick that the client plays.", "Choose the sport.", "Scan or type the code of the blank tag."],
            answer.Errors);
    }

    [Fact]
    public async Task Tag_on_another_racket_is_not_taken_away_from_it()
    {
        var family = _shop.Records.Family();
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/clients/first-visit"),
            [.. Visit, ("Input.Phone", ""), ("Input.Tag", "Blank"), ("Input.BlankCode", family.Tag.ToString())]);

        Assert.Equal("This tag is on Pim Ferran’s racket 1. Use another one.", Assert.Single(answer.Errors));
        Assert.Equal(family.Racket, _shop.Get<TagStore>().Get(family.Tag)!.RacketId);
        Assert.Equal((1, 1, 1, 1), Counts());
    }

    [Fact]
    public async Task Client_who_seems_to_be_on_file_is_asked_about()
    {
        _shop.Records.Client("Odalys Ferran", "+442079460958");
        var owner = _shop.Owner();

        var asked = await owner.Send(await owner.Open("/shop/clients/first-visit"), Visit);

        Assert.StartsWith("Odalys Ferran already has this phone number.", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal((1, 0, 0, 0), Counts());
        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));
        Assert.Equal((2, 1, 1, 1), Counts());
    }

    private (int Clients, int Players, int Rackets, int Tags) Counts() => _shop.Database.Read(c =>
        c.QuerySingle<(int, int, int, int)>("""
            SELECT (SELECT COUNT(*) FROM client), (SELECT COUNT(*) FROM player), (SELECT COUNT(*) FROM racket),
                   (SELECT COUNT(*) FROM tag WHERE state = 'Live')
            """));
}
