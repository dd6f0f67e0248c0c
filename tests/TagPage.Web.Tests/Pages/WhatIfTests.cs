using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Pim's racket: polyester of 1.25 mm strung on 1 November, 3 hours a week, so it is due by hours on 9 December.</summary>
public sealed class WhatIfTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _racket;

    public WhatIfTests()
    {
        _shop.Records.Shop();
        _racket = _shop.Records.Family().Racket;
        _shop.Records.Kind("Gannet", "NaturalGut", 1.30m);
    }

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("", "9 Dec 2026")]
    [InlineData("?Input.TimesAWeek=4", "20 Nov 2026")]
    [InlineData("?Input.GaugeMm=1.30", "13 Dec 2026")]
    [InlineData("?Input.Rule=EveryWeeks&Input.EveryWeeks=4", "29 Nov 2026")]
    [InlineData("?Input.StringId=2&Input.Rule=Hours", "21 Mar 2027")]
    public async Task Supposing_moves_the_date_and_saves_nothing(string query, string day)
    {
        var before = _shop.Database.Dump();

        var page = await _shop.Owner().Open($"/shop/rackets/what-if/{_racket}{query}");

        Assert.Equal(day, page.Document.QuerySelector(".big")!.TextContent);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Impossible_suppositions_are_told_and_the_date_stays()
    {
        var page = await _shop.Owner().Open($"/shop/rackets/what-if/{_racket}?Input.TimesAWeek=99");

        Assert.Equal("Enter 0 to 21 times a week.", Assert.Single(page.Errors));
        Assert.Equal("9 Dec 2026", page.Document.QuerySelector(".big")!.TextContent);
    }

    [Fact]
    public async Task Card_leads_there_and_an_own_date_is_left_out()
    {
        _shop.Records.Change("UPDATE racket SET own_date = '2027-05-01'");
        var card = await _shop.Owner().Open($"/shop/rackets/{_racket}");
        var page = await _shop.Owner().Open(card.Document.QuerySelector("a[href*='what-if']")!.GetAttribute("href")!);

        Assert.Equal("9 Dec 2026", page.Document.QuerySelector(".big")!.TextContent);
        Assert.Contains("Your own date, 1 May 2027, is left out", page.Main, StringComparison.Ordinal);
    }
}
