using System.Net;
using Dapper;
using TagPage.Core.Rackets;
using TagPage.Core.Tags;
using TagPage.Records.Rackets;
using TagPage.Records.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class HandOverTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _racket, _bastian;
    private readonly TagCode _tag;

    public HandOverTests()
    {
        var family = _shop.Records.Family();
        (_racket, _tag) = (family.Racket, family.Tag);
        _bastian = _shop.Records.Player(_shop.Records.Client("Bastian Okoro"), "Bastian");
        _shop.Records.Racket(_bastian, 1);
    }

    private RacketStore Rackets => _shop.Get<RacketStore>();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Racket_goes_to_another_client_with_its_frame_and_without_its_past()
    {
        _shop.Database.Write(c => c.Execute("UPDATE racket SET own_date = '2026-12-24', own_date_note = 'before the holidays', lost_since = '2026-11-20'"));
        var owner = _shop.Owner();
        var found = await owner.Open($"/shop/rackets/hand-over/{_racket}?q=basti");
        var form = await owner.Open(found.Document.QuerySelector("ul.list a")!.GetAttribute("href")!);
        Assert.Contains("Its tag is retired", form.Main, StringComparison.Ordinal);

        var answer = await owner.Send(form);

        var moved = Rackets.Get(3)!;
        Assert.Equal("/shop/rackets/3", answer.Location);
        Assert.Equal((_bastian, 2, RacketState.InTurn, "Pellmore Meadow 98", 16), (moved.PlayerId, moved.Number, moved.State, moved.Frame, moved.PatternMains));
        Assert.Equal((null, "", "", false), (moved.OwnDate, moved.OwnDateNote, moved.Note, moved.IsTagged));
        var left = Rackets.Get(_racket)!;
        Assert.Equal((RacketState.Sold, true, OnFile.CanaryNote), (left.State, left.IsHandedOver, left.Note));
        Assert.Equal(TagState.Retired, _shop.Get<TagStore>().Get(_tag)!.State);
        Assert.Empty(_shop.Get<CardStore>().Get(3)!.Jobs);
        Assert.Null(_shop.Get<CardStore>().Get(3)!.LostSince);
        Assert.Single(_shop.Get<CardStore>().Get(_racket)!.Jobs);
    }

    [Fact]
    public async Task Form_sent_twice_hands_over_once()
    {
        var owner = _shop.Owner();
        var form = await owner.Open($"/shop/rackets/hand-over/{_racket}?to={_bastian}");
        await owner.Send(form);

        var second = await owner.Send(form);

        Assert.Equal("/shop/rackets/3", second.Location);
        Assert.Null(Rackets.Get(4));
        var afterwards = await owner.Send(await owner.Open($"/shop/rackets/hand-over/{_racket}?to={_bastian}"), ("Input.Number", "9"));
        Assert.Contains("already been handed over", afterwards.Main, StringComparison.Ordinal);
        Assert.Null(Rackets.Get(4));
    }

    [Fact]
    public async Task Racket_with_an_open_ticket_stays()
    {
        _shop.Records.Job(_racket);
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/rackets/hand-over/{_racket}?to={_bastian}"));

        Assert.Contains("is still on the bench", answer.Main, StringComparison.Ordinal);
        Assert.Equal(RacketState.InTurn, Rackets.Get(_racket)!.State);
        Assert.Equal(TagState.Live, _shop.Get<TagStore>().Get(_tag)!.State);
    }

    [Fact]
    public async Task Number_that_is_taken_there_is_refused_and_nothing_happens()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/rackets/hand-over/{_racket}?to={_bastian}"), ("Input.Number", "1"));

        Assert.Equal("Bastian already has a racket 1. Choose another number.", Assert.Single(answer.Errors));
        Assert.Equal(RacketState.InTurn, Rackets.Get(_racket)!.State);
        Assert.Equal(TagState.Live, _shop.Get<TagStore>().Get(_tag)!.State);
    }

    [Fact]
    public async Task Racket_changed_meanwhile_is_told_before_it_goes()
    {
        var owner = _shop.Owner();
        var form = await owner.Open($"/shop/rackets/hand-over/{_racket}?to={_bastian}");
        await owner.Send(await owner.Open($"/shop/rackets/edit/{_racket}"), ("Input.Grip", "L1"));

        var told = await owner.Send(form);

        Assert.Contains("Somebody else saved this record", told.Main, StringComparison.Ordinal);
        Assert.Null(Rackets.Get(3));
    }

    [Fact]
    public async Task Player_who_has_it_cannot_get_it_and_an_unknown_one_is_not_found()
    {
        var owner = _shop.Owner();
        var own = Rackets.Get(_racket)!.PlayerId;

        var answer = await owner.Send(await owner.Open($"/shop/rackets/hand-over/{_racket}?to={own}"), ("Input.Number", "7"));

        Assert.Contains("Choose somebody else", answer.Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get($"/shop/rackets/hand-over/{_racket}?to=99")).StatusCode);
    }
}
