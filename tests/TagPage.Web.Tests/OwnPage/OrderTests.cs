using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Odalys asks for a restring in her own page.</summary>
public sealed class OrderTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _player, _racket;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        (_odalys, _player, _racket, _, _) = _shop.Records.Family();
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Same_again_waits_at_the_bench_as_it_was_strung_last_with_when_and_where_it_comes()
    {
        await Ask(("Input.Where", "club desk"), ("Input.By", "2026-11-28"), ("Input.NeededBy", "2026-12-02"));

        Assert.Equal("Waiting|52.0|50.0|2450|1|OwnPage|club desk|2026-11-28|2026-12-02|",
            _shop.Records.Text("SELECT state || '|' || mains_tension || '|' || crosses_tension || '|' || price_minor || '|' || expected || '|' || asked_in || '|' || drop_off_where || '|' || drop_off_by || '|' || needed_by || '|' || asked_words FROM job JOIN job_request ON job_id = id ORDER BY id DESC"));
        var bench = (await _shop.Owner().Open("/shop")).Main;
        Assert.Contains("asked for on their own page", bench, StringComparison.Ordinal);
        Assert.Contains("comes: club desk by 28 Nov 2026", bench, StringComparison.Ordinal);
        Assert.Contains("needed in 7 days", bench, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Same_again_says_what_that_is_with_its_price()
    {
        var said = (await _phone.Open($"/my/order/{_racket}")).Main;

        Assert.Contains("52 / 50 lb · Heron Spin 1.25 · £24.50", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Same_again_names_no_price_that_somebody_else_pays()
    {
        _shop.Records.Change("INSERT INTO payer (name) VALUES ('Eastmere Academy')");
        _shop.Records.Change("UPDATE client SET payer_id = 1");

        var page = await _phone.Open($"/my/order/{_racket}");

        Assert.Contains("52 / 50 lb · Heron Spin 1.25", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("24.50", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Changed_wish_is_read_at_the_bench_in_the_clients_words()
    {
        await Ask(("Input.Kind", "Different"), ("Input.Strings", "something softer"), ("Input.Tension", "two less"));

        Assert.Contains("strings: something softer", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Client_follows_it_to_the_counter_with_its_price()
    {
        await Ask();
        await Shows("Requested. Bring the racket to the shop.");
        _shop.Records.Change("UPDATE job_request SET expected = 0");
        await Shows("At the shop, waiting its turn");
        _shop.Records.Change("UPDATE job SET state = 'OnMachine' WHERE state = 'Waiting'");
        await Shows("On the machine");
        _shop.Records.Change("UPDATE job SET state = 'Strung', strung_on = '2026-11-25' WHERE state = 'OnMachine'");
        await Shows("Ready to collect");
        _shop.Records.Change("UPDATE job SET state = 'Collected', collected_on = '2026-11-25' WHERE state = 'Strung'");
        Assert.True((await _phone.Open($"/my/rackets/{_racket}")).Document.QuerySelector("main .job") is null);

        async Task Shows(string state)
        {
            var job = (await _phone.Open($"/my/rackets/{_racket}")).Document.QuerySelector("main .job")!.TextContent;
            Assert.Contains(state, job, StringComparison.Ordinal);
            Assert.Contains("£24.50", job, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Client_is_thanked_by_mail_and_the_mail_holds_no_link()
    {
        await Ask();

        var mail = Assert.Single(await _shop.MailsSent());
        Assert.Contains("we have your request for Pim, racket 1", mail, StringComparison.Ordinal);
        Assert.DoesNotContain("http", mail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Request_can_be_cancelled_until_it_is_on_the_machine()
    {
        await Ask();
        var page = await _phone.Open($"/my/rackets/{_racket}");
        await _phone.Send(page, page.Form("?handler=Cancel"));
        Assert.Equal("Cancelled", _shop.Records.Text("SELECT state FROM job ORDER BY id DESC"));

        await Ask();
        page = await _phone.Open($"/my/rackets/{_racket}");
        _shop.Records.Change("UPDATE job SET state = 'OnMachine' WHERE state = 'Waiting'");
        var late = await _phone.Send(page, page.Form("?handler=Cancel"));

        Assert.Contains("already on the machine", late.Document.QuerySelector(".errors")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("OnMachine", _shop.Records.Text("SELECT state FROM job ORDER BY id DESC"));
    }

    [Fact]
    public async Task Ticket_taken_in_at_the_counter_is_not_cancelled_from_afar()
    {
        var job = _shop.Records.Job(_racket);
        var page = await _phone.Open($"/my/rackets/{_racket}");
        Assert.False(page.HasForm("?handler=Cancel"));
        var form = page.Form($"/my/rackets/{_racket}?handler=Role");
        form.SetAttribute("action", $"/my/rackets/{_racket}?handler=Cancel");

        Assert.Equal(HttpStatusCode.NotFound, (await _phone.Send(page, form, ("job", $"{job}"))).Status);
        Assert.Equal("Waiting", _shop.Records.Text("SELECT state FROM job ORDER BY id DESC"));
    }

    [Fact]
    public async Task Form_sent_twice_makes_one_ticket_and_one_mail()
    {
        var page = await _phone.Open($"/my/order/{_racket}");
        await _phone.Send(page);
        var again = await _phone.Send(page);

        Assert.Equal(HttpStatusCode.Found, again.Status);
        Assert.Equal(2, _shop.Records.Count("job"));
        Assert.Equal(1, _shop.Records.Count("outbox"));
    }

    [Fact]
    public async Task Racket_with_an_open_ticket_gets_no_second_one()
    {
        var page = await _phone.Open($"/my/order/{_racket}");
        _shop.Records.Job(_racket);

        var answer = await _phone.Send(page, ("Input.Where", "kept place"));

        Assert.Contains("is already under way", answer.Main, StringComparison.Ordinal);
        Assert.Contains("kept place", answer.Text, StringComparison.Ordinal);
        Assert.Equal(2, _shop.Records.Count("job"));
    }

    [Fact]
    public async Task What_is_under_way_is_shown_instead_of_the_form()
    {
        await Ask(("Input.Where", "club desk"));

        var page = await _phone.Open($"/my/order/{_racket}");

        Assert.Contains("Requested. Bring the racket to the shop.", page.Document.QuerySelector("main .job")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("club desk", page.Main, StringComparison.Ordinal);
        Assert.Contains("already under way", page.Main, StringComparison.Ordinal);
        Assert.Null(page.Document.QuerySelector("[name='Input.Kind']"));
        Assert.True(page.HasForm("?handler=Cancel"));
    }

    [Fact]
    public async Task Racket_the_shop_never_strung_is_left_to_a_call()
    {
        var fresh = _shop.Records.Racket(_player, 2);

        var answer = await _phone.Send(await _phone.Open($"/my/order/{fresh}"));

        Assert.Contains("has not strung this racket yet", answer.Main, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("job"));
    }

    [Theory]
    [InlineData("Input.By", "2026-11-24", "Choose a day between today")]
    [InlineData("Input.By", "tomorrow", "Choose a day between today")]
    [InlineData("Input.NeededBy", "2028-01-01", "Choose a day between today")]
    [InlineData("Input.Kind", "", "Choose what the shop should do")]
    [InlineData("Input.Kind", "Different", "Say what should be different")]
    public async Task What_does_not_fit_is_said_and_nothing_is_made(string field, string value, string said)
    {
        var answer = await _phone.Send(await _phone.Open($"/my/order/{_racket}"), (field, value));

        Assert.Contains(said, Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("job"));
    }

    [Fact]
    public async Task Needed_before_it_is_brought_is_a_slip()
    {
        var answer = await _phone.Send(await _phone.Open($"/my/order/{_racket}"), ("Input.By", "2026-12-02"), ("Input.NeededBy", "2026-12-01"));

        Assert.Contains("before the day you drop it off", Assert.Single(answer.Errors), StringComparison.Ordinal);
    }

    private async Task Ask(params (string, string)[] fields) =>
        Assert.Equal($"/my/rackets/{_racket}", (await _phone.Send(await _phone.Open($"/my/order/{_racket}"), fields)).Location);
}
