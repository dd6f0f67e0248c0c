using AngleSharp.Html.Dom;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using TagPage.Records.Reminders;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Reminders;

/// <summary>Runa reminds all households that are due, after a look at the list.</summary>
public sealed class BatchTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;

    public BatchTests()
    {
        _shop.Records.Shop();
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    private BatchWorker Worker => _shop.Get<BatchWorker>();

    /// <summary>A household whose racket is past its date.</summary>
    private long Due(string name, string? mail = "x")
    {
        var client = _shop.Records.Client(name, null, mail is null ? null : $"{name.Split(' ')[0].ToLowerInvariant()}@canary.example");
        _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(client, name)), new(2026, 8, 1));
        _shop.Records.Change("UPDATE racket SET own_date = '2026-11-20' WHERE own_date IS NULL");
        return client;
    }

    private async Task<string> Begin()
    {
        var answer = await _runa.Send(await _runa.Open("/shop/nudges/batch"));
        Assert.StartsWith("/shop/nudges/batch/", answer.Location, StringComparison.Ordinal);
        return answer.Location!;
    }

    [Fact]
    public async Task Everybody_on_the_list_gets_one_mail_with_a_link_of_their_own()
    {
        foreach (var name in new[] { "Ada Lind", "Bo Marsh", "Cy Roe" })
            Due(name);
        var progress = await Begin();
        Assert.Equal(0, _shop.Records.Count("outbox"));
        var waiting = await _runa.Open(progress);
        Assert.Contains("0 of 3 households are dealt with", waiting.Main, StringComparison.Ordinal);
        Assert.Equal("5", waiting.Response.Headers.GetValues("Refresh").Single());

        Worker.Round();

        var done = await _runa.Open(progress);
        Assert.Contains("3 of 3 households are dealt with, 3 on the way.", done.Main, StringComparison.Ordinal);
        Assert.False(done.Response.Headers.Contains("Refresh"));
        var links = (await _shop.MailsSent()).SelectMany(m => m.Split('\n')).Where(l => l.StartsWith("https://tag.example/n/", StringComparison.Ordinal)).ToList();
        Assert.Equal(3, links.Distinct().Count());
    }

    [Fact]
    public async Task Household_that_was_unticked_gets_none()
    {
        Due("Ada Lind");
        var bo = Due("Bo Marsh");
        var page = await _runa.Open("/shop/nudges/batch");
        page.Document.QuerySelector($"#client-{bo}")!.RemoveAttribute("checked");

        await _runa.Send(page, (IHtmlFormElement)page.Document.QuerySelector("main form")!);
        Worker.Round();

        Assert.Equal("Ada Lind", _shop.Records.Text("SELECT group_concat(c.name) FROM reminder n JOIN client c ON c.id = n.client_id"));
    }

    [Theory]
    [InlineData("UPDATE client SET mail = NULL", "no email address on file")]
    [InlineData("UPDATE client SET remind_by = 'Sms'", "wants SMS")]
    [InlineData("UPDATE client SET quiet_months = 1024", "no reminders this month")]
    [InlineData("INSERT INTO reminder (client_id, made_at, expires_at, sent_how, sent_at) SELECT id, '2026-11-20T09:00:00.000Z', '2027-01-20T09:00:00.000Z', 'Mail', '2026-11-20T09:00:00.000Z' FROM client", "a reminder was written less than 14 days ago")]
    public async Task Household_that_cannot_or_must_not_be_mailed_is_left_out_and_the_list_says_why(string change, string why)
    {
        Due("Ada Lind");
        _shop.Records.Change(change);

        var page = await _runa.Open("/shop/nudges/batch");

        Assert.Contains(why, page.Main, StringComparison.Ordinal);
        Assert.Empty(page.Document.QuerySelectorAll("[name='Input.Clients']"));
        Assert.Contains("Tick at least one household", (await _runa.Send(page)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reminder_that_was_made_and_never_sent_keeps_nobody_out()
    {
        var ada = Due("Ada Lind");
        _shop.Records.Reminder(ada, long.Parse(_shop.Records.Text("SELECT id FROM racket"), null));
        await Begin();

        Worker.Round();

        Assert.Equal(1, _shop.Records.Count("outbox", "kind = 'Reminder'"));
    }

    [Fact]
    public async Task Reminder_whose_email_was_given_up_keeps_nobody_out()
    {
        var ada = Due("Ada Lind");
        await Begin();
        Worker.Round();
        _shop.Records.Change("UPDATE outbox SET state = 'Failed', last_error = 'no such mailbox'");

        await Begin();
        Worker.Round();

        Assert.Equal(2, _shop.Records.Count("outbox", $"to_client_id = {ada}"));
    }

    [Fact]
    public async Task Batch_says_what_became_of_each_email()
    {
        Due("Ada Lind");
        Due("Bo Marsh");
        var progress = await Begin();
        Worker.Round();
        Assert.Contains("the email is on its way", (await _runa.Open(progress)).Main, StringComparison.Ordinal);

        _shop.Records.Change("UPDATE outbox SET state = 'Failed', last_error = 'no such mailbox' WHERE id = (SELECT MAX(id) FROM outbox)");
        await _shop.MailsSent();

        var page = (await _runa.Open(progress)).Main;
        Assert.Contains("2 of 2 households are dealt with, 1 emailed, 1 not delivered.", page, StringComparison.Ordinal);
        Assert.Contains("emailed on 25 Nov 2026", page, StringComparison.Ordinal);
        Assert.Contains("the email did not go out: no such mailbox", page, StringComparison.Ordinal);
        Assert.DoesNotContain("on its way", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Household_whose_email_is_refused_for_now_is_not_yet_reminded()
    {
        Due("Ada Lind");
        await Begin();
        Worker.Round();

        _shop.Records.Change("UPDATE outbox SET state = 'Queued', last_error = 'try again later'");

        foreach (var address in new[] { "/shop", "/shop/due" })
        {
            var page = (await _runa.Open(address)).Main;
            Assert.Contains("reminder on its way, written today", page, StringComparison.Ordinal);
            Assert.DoesNotContain("reminded", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Household_whose_email_was_given_up_does_not_stand_as_reminded_on_bench_and_due_list()
    {
        Due("Ada Lind");
        await Begin();
        Worker.Round();
        await _shop.MailsSent();
        Assert.Contains("reminded today", (await _runa.Open("/shop")).Main, StringComparison.Ordinal);

        _shop.Records.Change("UPDATE outbox SET state = 'Failed', sent_at = NULL, last_error = 'no such mailbox'");

        foreach (var address in new[] { "/shop", "/shop/due" })
        {
            var page = await _runa.Open(address);
            Assert.DoesNotContain("reminded today", page.Main, StringComparison.Ordinal);
            Assert.Contains("email not delivered, written today", page.Main, StringComparison.Ordinal);
            Assert.Null(page.Document.QuerySelector(".household details summary strong"));
        }
    }

    [Fact]
    public async Task What_changed_since_the_list_was_looked_at_is_judged_anew()
    {
        var ada = Due("Ada Lind");
        var progress = await Begin();
        _shop.Records.Change("UPDATE client SET reminders = 0 WHERE id = @ada", new { ada });

        Worker.Round();

        Assert.Equal(0, _shop.Records.Count("outbox"));
        Assert.Contains("left out: wants no reminders", (await _runa.Open(progress)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Batch_that_broke_off_in_the_middle_goes_on_after_a_restart_and_nobody_gets_two_mails_or_none()
    {
        foreach (var name in new[] { "Ada Lind", "Bo Marsh", "Cy Roe", "Di Voss", "Ed Wren" })
            Due(name);
        await Begin();
        var store = _shop.Get<BatchStore>();
        store.Step();
        store.Step();
        // The power fails while the third household's email is written: its reminder is undone as well.
        _shop.Records.Change("CREATE TRIGGER cut BEFORE INSERT ON outbox BEGIN SELECT RAISE(ABORT, 'power cut'); END");
        Assert.Throws<SqliteException>(() => store.Step());
        Assert.Equal((2, 2), (_shop.Records.Count("reminder"), _shop.Records.Count("outbox")));
        _shop.Records.Change("DROP TRIGGER cut");

        // A program that knows nothing but the data folder.
        using var restarted = ActivatorUtilities.CreateInstance<BatchWorker>(_shop.Services);
        restarted.Round();
        restarted.Round();

        Assert.Equal("1|1|1|1|1", _shop.Records.Text("SELECT group_concat(n, '|') FROM (SELECT COUNT(*) AS n FROM outbox WHERE kind = 'Reminder' GROUP BY to_client_id)"));
        Assert.Equal(5, _shop.Records.Count("reminder_batch_client", "state = 'Sent' AND reminder_id IS NOT NULL"));
    }

    [Fact]
    public async Task In_quiet_hours_nothing_goes_out_and_after_them_it_does()
    {
        var ada = Due("Ada Lind");
        _shop.Clock.Advance(TimeSpan.FromHours(11));
        var progress = await Begin();
        Worker.Round();
        Assert.Equal(0, _shop.Records.Count("outbox"));
        var waiting = (await _runa.Open(progress)).Main;
        Assert.Contains("Reminders go out at 8:00", waiting, StringComparison.Ordinal);
        Assert.DoesNotContain("are going out", waiting, StringComparison.Ordinal);
        var list = await _runa.Open("/shop/nudges");
        Assert.Contains("1 reminder is waiting to be sent; nothing goes out before 8:00", list.Main, StringComparison.Ordinal);
        Assert.NotNull(list.Document.QuerySelector($"main a[href='{progress}']"));
        var due = await _runa.Open("/shop/due");
        Assert.Contains("reminder waiting to be sent", due.Main, StringComparison.Ordinal);
        Assert.Equal("Note an answer", due.Document.QuerySelector($".who a[href='/shop/nudges/new?client={ada}']")?.TextContent);
        Assert.Null(due.Document.QuerySelector("a.remind[aria-label^=Remind]"));
        Assert.Contains("already waiting to be sent", (await _runa.Open($"/shop/nudges/new?client={ada}")).Main, StringComparison.Ordinal);
        var next = await _runa.Open("/shop/nudges/batch");
        Assert.Contains("left out: its reminder is already waiting to be sent", next.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("Send the reminders", next.Main, StringComparison.Ordinal);

        _shop.Clock.Advance(TimeSpan.FromHours(11));
        Worker.Round();

        Assert.Equal(1, _shop.Records.Count("outbox"));
    }

    [Theory]
    [InlineData(20, 20, 8, true)]
    [InlineData(7, 20, 8, true)]
    [InlineData(8, 20, 8, false)]
    [InlineData(19, 20, 8, false)]
    [InlineData(12, 12, 14, true)]
    [InlineData(14, 12, 14, false)]
    [InlineData(0, 0, 0, false)]
    public void Quiet_hours_pass_midnight_where_need_be(int hour, int from, int until, bool quiet) =>
        Assert.Equal(quiet, BatchWorker.IsWithin(hour, from, until));

    [Fact]
    public async Task Stop_leaves_out_who_waits()
    {
        Due("Ada Lind");
        Due("Bo Marsh");
        var progress = await Begin();
        _shop.Get<BatchStore>().Step();
        await _runa.Send(await _runa.Open(progress));

        Worker.Round();

        Assert.Equal(1, _shop.Records.Count("outbox"));
        Assert.Contains("Stopped: 1 were left out", (await _runa.Open(progress)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Form_sent_twice_makes_one_batch()
    {
        Due("Ada Lind");
        var page = await _runa.Open("/shop/nudges/batch");

        var (first, second) = (await _runa.Send(page), await _runa.Send(page));

        Assert.Equal(first.Location, second.Location);
        Assert.Equal(1, _shop.Records.Count("reminder_batch"));
    }
}
