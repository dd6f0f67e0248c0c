using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Reminders;

public sealed class ReminderSettingsTests : IDisposable
{
    private const string Page = "/shop/settings/reminders";

    private readonly TestShop _shop = new();
    private readonly Visitor _runa;

    public ReminderSettingsTests()
    {
        _shop.Records.Shop();
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Own_words_and_days_are_kept()
    {
        await _runa.Send(await _runa.Open(Page), ("Input.DaysBetween", "21"), ("Input.Markdown", "Hi {client}: {rackets} {link} {stop}"), ("Input.Sms", "{shop} {link}"));

        Assert.Equal("21|Hi {client}: {rackets} {link} {stop}|{shop} {link}", _shop.Records.Text("SELECT printf('%d|%s|%s', days_between_reminders, m.words, s.words) FROM shop, message m, message s WHERE m.purpose = 'Reminder' AND s.purpose = 'ReminderSms'"));
    }

    [Theory]
    [InlineData("Input.Markdown", "Hi {client} {stop}", "Put {link} where the household’s link goes.")]
    [InlineData("Input.Markdown", "Hi {client} {link}", "Put {stop} where the link to stop reminders goes: everybody must be able to find it.")]
    [InlineData("Input.Sms", "Hello", "Put {link} where the household’s link goes.")]
    [InlineData("Input.Sms", "{link} {name}", "{name} means nothing here. You can use: {client}, {shop}, {rackets}, {link}, {stop}.")]
    [InlineData("Input.DaysBetween", "366", "Enter a number of days from 0 to 365.")]
    public async Task Words_that_would_lose_a_link_are_refused(string field, string value, string says)
    {
        var before = _shop.Database.Dump();

        var page = await _runa.Send(await _runa.Open(Page), (field, value));

        Assert.Contains(says, page.Errors);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Preview_saves_nothing_and_runs_no_script()
    {
        var before = _shop.Database.Dump();

        var page = await _runa.Send(await _runa.Open(Page), ("Preview", "true"), ("Input.Markdown", "**Hi** {client} <script>x</script> {link} {stop}"));

        Assert.Equal("Hi", page.Document.QuerySelector(".letter strong")!.TextContent);
        Assert.Empty(page.Document.QuerySelectorAll(".letter script"));
        Assert.Contains("SMS, 1 message", page.Main, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Words_somebody_else_saved_meanwhile_are_not_overwritten()
    {
        var page = await _runa.Open(Page);
        _shop.Records.OwnWords("ReminderSms", "theirs {link}");
        _shop.Records.Change("UPDATE shop SET version = version + 1");

        var answer = await _runa.Send(page, ("Input.Sms", "mine {link}"));

        Assert.Contains("Somebody else saved this record", answer.Main, StringComparison.Ordinal);
        Assert.Equal("theirs {link}", _shop.Records.Text("SELECT words FROM message WHERE purpose = 'ReminderSms'"));
    }
}
