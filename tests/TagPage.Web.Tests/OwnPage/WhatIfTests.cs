using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>What Odalys asks about another habit, which saves nothing.</summary>
public sealed class WhatIfTests : OdalysPhone
{
    [Fact]
    public async Task What_if_shows_another_date_and_saves_nothing()
    {
        var before = Shop.Database.Dump();

        var asked = await Phone.Open($"/my/what-if/{Racket}?times=6&hours=2,5&role=InTurn");

        Assert.Contains("15 h a week", asked.Main, StringComparison.Ordinal);
        Assert.NotNull(asked.Document.QuerySelector("[role=status]"));
        Assert.Equal("2,5", asked.Document.QuerySelector("[name=Hours]")!.GetAttribute("value"));
        Assert.Equal(before, Shop.Database.Dump());
    }

    [Fact]
    public async Task What_if_without_play_says_once_that_there_is_none()
    {
        var asked = await Phone.Open($"/my/what-if/{Racket}?times=0&hours=1&role=InTurn");

        Assert.Equal(2, asked.Main.Split("no hours of play to count").Length);
        Assert.DoesNotContain("noted", asked.Document.QuerySelector("main section")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("?times=6&hours=2,5&role=InTurn")]
    public async Task What_if_leaves_the_shops_own_date_out(string query)
    {
        static List<string> Dates(WebPage page) => [.. page.Document.QuerySelectorAll("strong").Select(d => d.TextContent)];
        var without = Dates(await Phone.Open($"/my/what-if/{Racket}{query}"));
        Shop.Records.Change("UPDATE racket SET own_date = '2027-05-01'");

        var page = await Phone.Open($"/my/what-if/{Racket}{query}");

        Assert.Equal(without, Dates(page));
        Assert.Contains("The date chosen by the shop, 1 May 2027, is left out here.", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_is_listed_in_the_order_of_the_fields()
    {
        var page = await Phone.Open($"/my/what-if/{Racket}?times=often&hours=long&role=InTurn");

        Assert.Equal(["#Times", "#Hours"], page.Document.QuerySelectorAll(".errors a").Select(a => a.GetAttribute("href")));
    }

    [Theory]
    [InlineData("?times=often&hours=1")]
    [InlineData("?times=22&hours=1")]
    [InlineData("?times=-1&hours=1")]
    [InlineData("")]
    public async Task What_if_without_numbers_shows_the_date_of_now_alone(string query)
    {
        var page = await Phone.Open($"/my/what-if/{Racket}{query}");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Null(page.Document.QuerySelector("[role=status]"));
    }
}
