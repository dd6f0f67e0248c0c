using Dapper;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class BenchTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    private long Waiting(string promised)
    {
        var job = _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Client " + promised, "+442079460111"), "Player")));
        _shop.Database.Write(c => c.Execute("UPDATE job SET promised_for = NULLIF(@promised, '') WHERE id = @job", new { promised, job }));
        return job;
    }

    private static IEnumerable<string> Tickets(WebPage page, string section) =>
        page.Document.QuerySelectorAll($"section[aria-labelledby={section}] .no").Select(n => n.TextContent);

    [Fact]
    public async Task Empty_shop_says_what_to_do_first()
    {
        var page = await _shop.Owner().Open("/shop");

        foreach (var address in new[] { "/shop/strings/new", "/shop/clients/first-visit", "/shop/import" })
            Assert.NotNull(page.Document.QuerySelector($"main a[href='{address}']"));
    }

    [Fact]
    public async Task Next_to_string_is_on_the_machine_then_promised_first_then_ticket()
    {
        var (none, later, first, second, started) = (Waiting(""), Waiting("2026-11-28"), Waiting("2026-11-26"), Waiting("2026-11-26"), Waiting("2026-11-29"));
        _shop.Get<MoveStore>().Start(Who.Shop, started);

        var page = await _shop.Owner().Open("/shop");

        var jobs = _shop.Get<JobStore>();
        Assert.Equal(new[] { started, first, second, later, none }.Select(id => $"{jobs.Get(Who.Shop, id)!.Ticket}"), Tickets(page, "open"));
    }

    /// <summary>It is Wednesday, 10:00.</summary>
    private void OpenUntil(int closesAt) => _shop.Records.Change("INSERT INTO opening_span (weekday, opens_at, closes_at) VALUES (3, 540, @closesAt)", new { closesAt });

    [Fact]
    public async Task Bench_says_how_many_of_todays_promises_fit_into_the_opening_hours()
    {
        OpenUntil(11 * 60 + 15);
        var (first, second, third) = (Waiting("2026-11-25"), Waiting("2026-11-25"), Waiting("2026-11-25"));
        Waiting("2026-11-26");

        var page = await _shop.Owner().Open("/shop");

        // 75 minutes are left, and a racket takes 30 as long as nobody timed one.
        Assert.Contains("2 of 3 promised by today fit in", page.Main, StringComparison.Ordinal);
        Assert.Contains("about 1 h 30 min of stringing, 1 h 15 min until closing at 11:15", page.Main, StringComparison.Ordinal);
        Assert.Equal([$"{_shop.Get<JobStore>().Get(Who.Shop, third)!.Ticket}"],
            page.Document.QuerySelectorAll(".job").Where(row => row.TextContent.Contains("does not fit into today", StringComparison.Ordinal)).Select(row => row.QuerySelector(".no")!.TextContent));
        Assert.True(first < second);
    }

    [Fact]
    public async Task Nothing_is_said_of_the_day_where_nobody_said_when_the_shop_is_open_or_nothing_is_promised()
    {
        Waiting("2026-11-26");
        Assert.DoesNotContain("into today", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
        OpenUntil(18 * 60);
        Assert.DoesNotContain("into today", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Closed_by_now_nothing_fits()
    {
        OpenUntil(9 * 60 + 30);
        Waiting("2026-11-24");

        Assert.Contains("the one promised by today no longer fits in", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Timer_stands_at_the_racket_on_the_machine_where_it_is_wanted()
    {
        _shop.Records.Shop();
        _shop.Get<MoveStore>().Start(Who.Shop, Waiting("2026-11-26"));
        _shop.Clock.Advance(TimeSpan.FromMinutes(12));
        var owner = _shop.Owner();
        Assert.DoesNotContain("of about", (await owner.Open("/shop")).Main, StringComparison.Ordinal);

        await owner.Send(await owner.Open("/shop/settings/bench"), ("Input.Timer", "true"));

        Assert.Contains("for 12 of about 30 min", (await owner.Open("/shop")).Main, StringComparison.Ordinal);
        Assert.Contains("for 12 min", (await owner.Open("/shop/jobs/1")).Main, StringComparison.Ordinal);
        _shop.Clock.Advance(TimeSpan.FromMinutes(21));
        _shop.Get<MoveStore>().MarkStrung(Who.Shop, 1, new StrungEntry { StrungOn = TestShop.Today });
        Assert.Contains("33 min", (await owner.Open("/shop/jobs/1")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Single_keys_can_be_turned_off()
    {
        _shop.Records.Shop();
        var owner = _shop.Owner();
        var bench = await owner.Open("/shop");
        Assert.Equal("on", bench.Document.Body!.GetAttribute("data-keys"));
        Assert.NotNull(bench.Document.QuerySelector("[data-keys-list][hidden]"));

        await owner.Send(await owner.Open("/shop/settings/bench"), ("Input.SingleKeys", "false"));

        bench = await owner.Open("/shop");
        Assert.Equal("off", bench.Document.Body!.GetAttribute("data-keys"));
        Assert.Null(bench.Document.QuerySelector("[data-keys-list]"));
    }

    [Fact]
    public async Task Late_promise_is_said_in_words()
    {
        Waiting("2026-11-24");

        var page = await _shop.Owner().Open("/shop");

        Assert.Contains("late: promised for 24 Nov 2026", page.Main, StringComparison.Ordinal);
        Assert.Contains("1 late", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_that_was_not_brought_yet_is_not_counted_as_to_string()
    {
        var (_, announced) = (Waiting("2026-11-26"), Waiting("2026-11-24"));
        _shop.Records.Change("INSERT INTO job_request (job_id, asked_in) VALUES (@announced, 'OwnPage')", new { announced });

        var heading = (await _shop.Owner().Open("/shop")).Document.QuerySelector("#open")!;

        Assert.Equal("1", heading.QuerySelector(".count")!.TextContent);
        Assert.Contains("1 not brought yet", heading.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("late", heading.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Start_is_one_press_away()
    {
        var job = Waiting("2026-11-26");
        var owner = _shop.Owner();
        var page = await owner.Open("/shop");

        var answer = await owner.Send(page, (AngleSharp.Html.Dom.IHtmlFormElement)page.Document.QuerySelector($"form[action='/shop/jobs/start/{job}']")!);

        Assert.Equal($"/shop/jobs/{job}", answer.Location);
        Assert.Equal(JobState.OnMachine, _shop.Get<JobStore>().Get(Who.Shop, job)!.State);
    }

    [Fact]
    public async Task Strung_waits_to_be_collected_with_what_is_to_be_paid()
    {
        var job = Waiting("2026-11-26");
        _shop.Get<MoveStore>().MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = TestShop.Today });

        var ready = (await _shop.Owner().Open("/shop")).Document.QuerySelector("section[aria-labelledby=ready]")!;

        Assert.Contains("not paid: £24.50", ready.TextContent, StringComparison.Ordinal);
        Assert.NotNull(ready.QuerySelector($"a[href='/shop/jobs/collect/{job}']"));
    }

    [Fact]
    public async Task What_came_in_today_is_listed_and_cancelled_tickets_are_not()
    {
        var (today, cancelled) = (Waiting("2026-11-26"), Waiting("2026-11-26"));
        _shop.Database.Write(c => c.Execute("UPDATE job SET received_on = '2026-11-25'"));
        _shop.Get<MoveStore>().Cancel(Who.Shop, cancelled);

        var page = await _shop.Owner().Open("/shop");

        Assert.Equal([$"{_shop.Get<JobStore>().Get(Who.Shop, today)!.Ticket}"], Tickets(page, "today"));
    }

    [Fact]
    public async Task Due_list_says_who_and_why_and_shows_who_wants_no_reminders_only_when_asked()
    {
        var client = _shop.Records.Client("Odalys Ferran", OnFile.CanaryPhone);
        _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(client, "Pim")), strungOn: new(2026, 9, 1));

        foreach (var path in new[] { "/shop", "/shop/due" })
        {
            var page = await _shop.Owner().Open(path);
            Assert.Contains("was due", page.Main, StringComparison.Ordinal);
            Assert.Contains("at 3 h a week", page.Document.QuerySelector("details .decides")!.TextContent, StringComparison.Ordinal);
        }
        _shop.Database.Write(c => c.Execute("UPDATE client SET reminders = 0"));
        Assert.DoesNotContain("Odalys", (await _shop.Owner().Open("/shop/due")).Main, StringComparison.Ordinal);
        Assert.Contains("wants no reminders", (await _shop.Owner().Open("/shop/due?unseen=true")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Long_due_list_is_paged()
    {
        for (var i = 0; i < 45; i++)
            _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_shop.Records.Client($"Client {i:00}"), "P")), strungOn: new(2026, 9, 1));
        var owner = _shop.Owner();

        var (first, second) = await Two();

        Assert.Equal((40, 5), (first.Document.QuerySelectorAll(".household").Length, second.Document.QuerySelectorAll(".household").Length));
        Assert.Contains("45 rackets of 45 clients", second.Main, StringComparison.Ordinal);
        Assert.Empty(first.Document.QuerySelectorAll(".who").Select(w => w.TextContent).Intersect(second.Document.QuerySelectorAll(".who").Select(w => w.TextContent)));

        async Task<(WebPage First, WebPage Second)> Two()
        {
            var page = await owner.Open("/shop/due");
            return (page, await owner.Open(page.Document.QuerySelector("nav[aria-label=Pages] a")!.GetAttribute("href")!));
        }
    }
}
