using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Reminders;

/// <summary>Answers that are changed, taken back or sent twice.</summary>
public sealed class ChangedAnswerTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Household _home;
    private readonly long _reminder;

    public ChangedAnswerTests()
    {
        _home = new Household(_shop);
        _reminder = _shop.Records.Reminder(_home.Client, _home.Racket);
    }

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("Same")]
    [InlineData("Different")]
    [InlineData("NotYet")]
    [InlineData("Elsewhere")]
    [InlineData("Gone")]
    public async Task Every_answer_can_be_changed_into_gone_and_back_and_leaves_nothing_behind(string first)
    {
        (string, string)[] more = [("Input.Rackets[0].Strings", "gut"), ("Input.Rackets[0].Weeks", "2"), ("Input.Rackets[0].ElsewhereOn", "2026-11-10")];
        await _home.Answer(_reminder, first, more);
        await _home.Answer(_reminder, first == "Gone" ? "NotYet" : "Gone", more);
        await _home.Answer(_reminder, "Same", more);

        Assert.Equal("InTurn||", _home.Value("SELECT printf('%s|%s|%s', state, not_before, elsewhere_on) FROM racket"));
        Assert.Equal("", _home.Value("SELECT ended_on FROM job ORDER BY id LIMIT 1"));
        Assert.Equal(1, _shop.Records.Count("job", "state = 'Waiting'"));
    }

    [Fact]
    public async Task Changed_wish_keeps_its_ticket()
    {
        await _home.Answer(_reminder, "Same");
        await _home.Answer(_reminder, "Different", ("Input.Rackets[0].Note", "blue ones"));

        Assert.Equal("blue ones", _home.Value("SELECT asked_words FROM job_request JOIN job ON id = job_id WHERE state = 'Waiting'"));
        Assert.Equal(2, _shop.Records.Count("job"));
    }

    [Fact]
    public async Task Request_cancelled_on_the_own_page_gives_the_answer_back_and_can_be_made_again()
    {
        await _home.Answer(_reminder, "Same");
        Assert.IsType<Outcome.Done>(_shop.Get<OrderStore>().Cancel(Who.Client(_home.Client), long.Parse(_home.Value("SELECT MAX(id) FROM job")!, null)));

        var page = await _shop.Stranger().Open(_home.Link(_reminder));
        Assert.DoesNotContain("The shop has your answer", page.Main, StringComparison.Ordinal);
        Assert.Contains("0 of 1", (await _shop.Owner().Open("/shop/nudges")).Main, StringComparison.Ordinal);

        await _home.Answer(_reminder, "Same");

        Assert.Equal(1, _shop.Records.Count("job", "state = 'Waiting'"));
        Assert.Contains("1 of 1", (await _shop.Owner().Open("/shop/nudges")).Main, StringComparison.Ordinal);
        Assert.Contains("The shop has your answer", (await _shop.Stranger().Open(_home.Link(_reminder))).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ticket_that_the_shop_cancels_gives_the_answer_back_until_the_shop_takes_that_back()
    {
        await _home.Answer(_reminder, "Same");
        _shop.Records.Change("UPDATE job SET state = 'Cancelled' WHERE state = 'Waiting'");
        Assert.DoesNotContain("The shop has your answer", (await _shop.Stranger().Open(_home.Link(_reminder))).Main, StringComparison.Ordinal);

        _shop.Records.Change("UPDATE job SET state = 'Waiting' WHERE state = 'Cancelled'");

        Assert.Contains("The shop has your answer", (await _shop.Stranger().Open(_home.Link(_reminder))).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task However_often_the_mind_changes_there_is_one_ticket_with_the_last_words()
    {
        for (var n = 0; n < 4; n++)
        {
            await _home.Answer(_reminder, "Different", ("Input.Rackets[0].Note", $"wish {n}"));
            await _home.Answer(_reminder, "NotYet");
        }
        _shop.Clock.Advance(TimeSpan.FromDays(1));
        await _home.Answer(_reminder, "Different", ("Input.Rackets[0].Note", "blue ones"));

        Assert.Equal(2, _shop.Records.Count("job"));
        Assert.Equal("Waiting 1 2026-11-26 blue ones", _home.Value("SELECT state || ' ' || expected || ' ' || received_on || ' ' || asked_words FROM job JOIN job_request ON job_id = id"));
    }

    [Fact]
    public async Task Sent_twice_an_answer_makes_one_ticket()
    {
        var odalys = _shop.Stranger();
        var page = await odalys.Open(_home.Link(_reminder));

        await odalys.Send(page, ("Input.Rackets[0].Answer", "Same"));
        await odalys.Send(page, ("Input.Rackets[0].Answer", "Same"));

        Assert.Equal(1, _shop.Records.Count("job", "state = 'Waiting'"));
    }
}
