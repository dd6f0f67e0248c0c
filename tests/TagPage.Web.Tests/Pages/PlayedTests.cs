using AngleSharp.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Logged hours, pauses and the player's page. Pim plays twice a week, 1.5 h, on polyester strung on 1 November.</summary>
public sealed class PlayedTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _player, _racket, _job;

    public PlayedTests()
    {
        _shop.Records.Shop();
        (_, _player, _racket, _, _job) = _shop.Records.Family();
    }

    public void Dispose() => _shop.Dispose();

    private string Due => _shop.Records.Text("SELECT due_on FROM racket");

    [Fact]
    public async Task Logged_hours_move_the_date_and_can_be_taken_away()
    {
        var owner = _shop.Owner();
        var before = Due;

        await owner.Send(await owner.Open($"/shop/hours/new/{_racket}"), ("Input.Hours", "15"), ("Input.PlayedOn", "2026-11-20"), ("Input.Note", "camp"));

        Assert.True(string.CompareOrdinal(Due, before) < 0, $"{Due} is not before {before}");
        var card = await owner.Open($"/shop/rackets/{_racket}");
        // A day, two weeks of 3 h, the noted 15 h, two days.
        Assert.Contains("22.3 h since it was strung", System.Text.RegularExpressions.Regex.Replace(card.Main, @"\s+", " "), StringComparison.Ordinal);
        await owner.Send(await owner.Open("/shop/hours/remove/1"));
        Assert.Equal(before, Due);
    }

    [Theory]
    [InlineData("Input.Hours", "-1", "Enter between 0 and 24 hours.")]
    [InlineData("Input.Hours", "30", "Enter between 0 and 24 hours.")]
    [InlineData("Input.LastDay", "2026-11-01", "The last day is before the first, or more than 62 days after it. Correct one of them.")]
    [InlineData("Input.Hours", "", "Enter how many hours.")]
    [InlineData("Input.PlayedOn", "2026-12-24", "This day is in the future; today is 25 Nov 2026.")]
    public async Task Impossible_hours_are_refused(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/hours/new/{_racket}"), ("Input.Hours", "2"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(0, _shop.Records.Count("logged_hours"));
    }

    [Fact]
    public async Task Pause_adds_its_days_and_can_be_changed_and_taken_away()
    {
        var owner = _shop.Owner();
        var before = Due;

        await owner.Send(await owner.Open($"/shop/pauses/new/{_player}"), ("Input.FromOn", "2026-11-26"), ("Input.ToOn", "2026-12-02"), ("Input.Note", "holiday"));
        var paused = Due;
        Assert.True(string.CompareOrdinal(paused, before) > 0, $"{paused} is not after {before}");
        Assert.Contains("26 Nov 2026 to 2 Dec 2026", (await owner.Open($"/shop/players/{_player}")).Main, StringComparison.Ordinal);
        Assert.Contains("not counting pauses", (await owner.Open($"/shop/rackets/{_racket}")).Main, StringComparison.Ordinal);

        await owner.Send(await owner.Open("/shop/pauses/edit/1"), ("Input.ToOn", "2026-11-28"));
        Assert.True(string.CompareOrdinal(Due, paused) < 0);

        var page = await owner.Open("/shop/pauses/edit/1");
        await owner.Send(page, page.Document.QuerySelector<AngleSharp.Html.Dom.IHtmlFormElement>("form[action='/shop/pauses/edit/1?handler=Remove']")!);
        Assert.Equal(before, Due);
    }

    [Fact]
    public async Task Pause_that_ends_before_it_begins_is_refused()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/pauses/new/{_player}"), ("Input.FromOn", "2026-11-26"), ("Input.ToOn", "2026-11-20"));

        Assert.Equal("The last day is before the first. Correct one of them.", Assert.Single(answer.Errors));
        Assert.Equal(0, _shop.Records.Count("pause"));
    }

    [Fact]
    public async Task Player_page_tells_shares_habit_and_typical_values()
    {
        _shop.Records.Racket(_player, 2, "Spare");

        var page = await _shop.Owner().Open($"/shop/players/{_player}");

        Assert.Contains("Plays twice a week, 1.5 h a time", page.Main, StringComparison.Ordinal);
        Assert.Contains("91 % of the play", page.Main, StringComparison.Ordinal);
        Assert.Contains("9 % of the play", page.Main, StringComparison.Ordinal);
        Assert.Contains("Estimate from typical values: loses 3.2 % for every tenfold increase in time and 0.7 % for every hour played.", page.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12", "Broke after 12 hours.")]
    [InlineData("12,14,16.5", "Broke after 12, 14 and 16.5 hours: one in five would break by 11.2 hours.")]
    public async Task Player_page_lists_breaks_and_says_what_follows_from_two_or_more(string hours, string sentence)
    {
        foreach (var (played, n) in hours.Split(',').Select((h, n) => (decimal.Parse(h, System.Globalization.CultureInfo.InvariantCulture), n)))
        {
            var job = _shop.Records.Job(_racket, new(2026, 1 + n, 1));
            _shop.Records.Change("UPDATE job SET ended_on = date(strung_on, '+20 days'), ended_how = 'Wear' WHERE id = @job", new { job });
            _shop.Records.Change("UPDATE job SET hours_played = @played WHERE id = @job", new { job, played });
        }

        Assert.Contains(sentence, (await _shop.Owner().Open($"/shop/players/{_player}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_else_s_pages_are_there()
    {
        foreach (var path in new[] { "/shop/players/77", "/shop/pauses/new/77", "/shop/hours/new/77", "/shop/pauses/edit/77", "/shop/hours/remove/77", "/shop/readings/new/77" })
            Assert.Equal(System.Net.HttpStatusCode.NotFound, (await _shop.Owner().Open(path)).Status);
        Assert.NotEqual(0, _job);
    }
}
