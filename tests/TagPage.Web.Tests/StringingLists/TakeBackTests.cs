using System.Globalization;
using System.Text.RegularExpressions;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.StringingLists;

/// <summary>A whole list goes again, and leaves everything as it was.</summary>
public sealed partial class TakeBackTests : IDisposable
{
    private const string List = "Client;Phone;Racket;Date;String;Tension;Price\nTamsin Quill;020 7946 0111;Pellmore Meadow 98;2025-03-14;Heron Spin 1.25;52;24.50\nTamsin Quill;;Another;2025-03-15;New String 1.30;50;\nIvo Bramante;;Dunmarrow;2025-04-01;New String 1.30;24 kg;20\n";

    private const string Followed = "Client;Racket;Date;String;Tension\nTamsin Quill;Another;2025-03-14;New String 1.30;52\nTamsin Quill;Another;2025-05-15;New String 1.30;51\nTamsin Quill;Another;2025-07-16;New String 1.30;50\n";

    private readonly TestShop _shop = new();

    public TakeBackTests()
    {
        ImportedShop.SetUp(_shop);
        _shop.Records.Family();
        var tamsin = _shop.Records.Client("Tamsin Quill");
        _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(tamsin, "Tamsin Quill")), new DateOnly(2026, 1, 2), new DateOnly(2026, 1, 2));
        _shop.Database.Write(_ => { });
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Everything_is_as_it_was_before_the_list_came()
    {
        var before = Content();
        var list = Bring();
        Assert.NotEqual(before, Content());

        Assert.IsType<Outcome.Done>(Back(list));

        Assert.Equal(before, Content());
        Assert.Equal(StringingListState.Back, _shop.Get<StringingListStore>().Get(list)!.State);
    }

    [Theory]
    [InlineData("UPDATE job SET note = 'x', version = version + 1 WHERE ticket = (SELECT MAX(ticket) FROM job)", "1 job changed since")]
    [InlineData("INSERT INTO logged_hours (racket_id, played_on, hours) SELECT MAX(id), '2026-11-20', 2 FROM racket", "1 record: logged hours")]
    [InlineData("INSERT INTO tag (code, state, racket_id, made_at) SELECT '0MWF2SBY7KE', 'Live', MAX(id), '2026-11-20T10:00:00.000Z' FROM racket", "1 tag")]
    [InlineData("INSERT INTO player (client_id, name, junior) SELECT MAX(id), 'Pip', 1 FROM client", "1 player")]
    [InlineData("INSERT INTO string_price (string_id, set_minor) SELECT MAX(id), 900 FROM string_kind", "1 entry of stock or prices")]
    [InlineData("INSERT INTO payment (client_id, paid_on, method, amount_minor, made_at, made_by) SELECT MAX(id), '2026-11-20', 'Cash', 500, '2026-11-20T10:00:00.000Z', 'Shop' FROM client", "1 payment")]
    [InlineData("UPDATE client SET note = 'x', version = version + 1 WHERE name = 'Tamsin Quill'", "1 client changed since")]
    [InlineData("UPDATE job SET label_date = '2026-11-20' WHERE ticket = (SELECT MAX(ticket) FROM job)", "1 job changed since")]
    public void Something_that_stands_on_it_is_said_and_nothing_goes(string sql, string says)
    {
        var list = Bring();
        _shop.Records.Change(sql);
        var before = _shop.Database.Dump();

        var refused = Assert.IsType<Outcome.Refused>(_shop.Get<TakeBackStore>().Begin(Who.Shop, list));

        Assert.Contains(says, ShopRefusals.Of(refused.Why), StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public void Something_that_comes_to_stand_on_it_while_it_leaves_holds_it_until_that_is_gone()
    {
        var list = Bring();
        Assert.IsType<Outcome.Done>(_shop.Get<TakeBackStore>().Begin(Who.Shop, list));
        _shop.Records.Change("INSERT INTO logged_hours (racket_id, played_on, hours) SELECT MAX(id), '2026-11-20', 2 FROM racket");

        _shop.Get<StringingListWorker>().Round();

        Assert.Equal(StringingListState.Held, _shop.Get<StringingListStore>().Get(list)!.State);
        Assert.Equal(1, _shop.Records.Count("logged_hours"));
        _shop.Records.Change("DELETE FROM logged_hours");
        Assert.IsType<Outcome.Done>(Back(list));
        Assert.Equal(StringingListState.Back, _shop.Get<StringingListStore>().Get(list)!.State);
    }

    [Fact]
    public void Payments_of_no_list_still_never_go()
    {
        Bring();

        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => _shop.Records.Change("DELETE FROM payment_share; DELETE FROM payment"));
    }

    [Fact]
    public void What_its_jobs_took_from_the_stock_is_put_back()
    {
        _shop.Records.Change("INSERT INTO string_stock (string_id, unit, racket_cm, since) SELECT id, 'Set', 1200, '2025-01-01' FROM string_kind WHERE name = 'Heron Spin'");
        var list = Bring();
        Assert.Equal("-1200", _shop.Records.Text("SELECT left_cm FROM string_stock"));

        Assert.IsType<Outcome.Done>(Back(list));

        Assert.Equal("0", _shop.Records.Text("SELECT left_cm FROM string_stock"));
    }

    [Fact]
    public async Task Page_names_the_tickets_that_were_worked_on_with_links()
    {
        var list = Bring();
        var (job, ticket) = (_shop.Records.Text("SELECT MAX(id) FROM job"), _shop.Records.Text("SELECT MAX(ticket) FROM job"));
        _shop.Records.Change("UPDATE job SET note = 'x', version = version + 1 WHERE id = @job", new { job });
        var owner = _shop.Owner();

        var refused = await owner.Send(await owner.Open($"/shop/import/list/{list}"));

        Assert.Contains($"1 job changed since (ticket {ticket})", refused.Main, StringComparison.Ordinal);
        Assert.Equal($"ticket {ticket}", refused.Document.QuerySelector($"main a[href='/shop/jobs/{job}']")!.TextContent);
    }

    [Theory]
    [InlineData("UPDATE job SET note = 'x', version = version + 1 WHERE ticket = (SELECT MAX(ticket) FROM job)", "What was changed stays changed, so the list stays.", "elete")]
    [InlineData("UPDATE job SET note = 'x', version = version + 1 WHERE ticket = (SELECT MAX(ticket) FROM job); INSERT INTO player (client_id, name, junior) SELECT MAX(id), 'Pip', 1 FROM client", "What was changed stays changed, so the list stays.", "elete")]
    [InlineData("INSERT INTO player (client_id, name, junior) SELECT MAX(id), 'Pip', 1 FROM client", "Delete what was added since, where its own page lets you, and press again, or leave the list as it is.", "stays changed")]
    public async Task Nobody_is_told_to_delete_what_cannot_be_deleted(string sql, string says, string not)
    {
        var list = Bring();
        _shop.Records.Change(sql);
        var owner = _shop.Owner();

        var refused = await owner.Send(await owner.Open($"/shop/import/list/{list}"));
        _shop.Records.Change("UPDATE stringing_list SET state = 'Held'");
        var held = await owner.Open($"/shop/import/list/{list}");

        Assert.All([refused, held], page => Assert.Contains(says, page.Main, StringComparison.Ordinal));
        Assert.All([refused, held], page => Assert.DoesNotContain(not, page.Main, StringComparison.Ordinal));
        Assert.IsType<Outcome.Refused>(_shop.Get<JobDeleteStore>().Delete(Who.Shop, long.Parse(_shop.Records.Text("SELECT MAX(id) FROM job"), CultureInfo.InvariantCulture)));
    }

    [Fact]
    public async Task Of_strings_that_followed_each_other_the_ticket_that_was_changed_is_named_and_not_its_neighbour()
    {
        var list = Bring(Followed);
        var (job, ticket) = (_shop.Records.Text("SELECT MIN(record_id) FROM stringing_list_record WHERE kind = 'job'"), _shop.Records.Text("SELECT ticket FROM job WHERE strung_on = '2025-03-14'"));
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/jobs/edit/{job}"), ("Input.Note", "brittle"));
        Assert.Equal("2025-07-16", _shop.Records.Text("SELECT ended_on FROM job WHERE strung_on = '2025-05-15'"));

        var by = Assert.Single(_shop.Get<TakeBackStore>().Stands(list));

        Assert.Equal(("job", true, 1, ticket), (by.Table, by.IsChange, by.Rows, $"{Assert.Single(by.On).Number}"));
    }

    [Fact]
    public void Job_that_was_strung_by_mistake_and_is_gone_again_leaves_nothing_in_the_way()
    {
        var list = Bring(Followed);
        var job = _shop.Records.Job(long.Parse(_shop.Records.Text("SELECT MAX(id) FROM racket"), CultureInfo.InvariantCulture));
        Assert.IsType<Outcome.Done>(_shop.Get<MoveStore>().MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = TestShop.Today }));
        Assert.IsType<Outcome.Refused>(Back(list));

        Assert.IsType<Outcome.Done>(_shop.Get<BackStore>().Back(Who.Shop, job, JobState.Strung));
        Assert.IsType<Outcome.Done>(_shop.Get<JobDeleteStore>().Delete(Who.Shop, job));

        Assert.IsType<Outcome.Done>(Back(list));
        Assert.Equal(0, _shop.Records.Count("job", "strung_on < '2026-01-01'"));
    }

    [Fact]
    public async Task Saving_a_ticket_without_a_change_is_none()
    {
        var before = Content();
        var list = Bring();
        var brought = _shop.Database.Dump();
        var owner = _shop.Owner();
        foreach (var job in _shop.Records.Text("SELECT group_concat(record_id) FROM stringing_list_record WHERE kind = 'job'").Split(','))
            Assert.Equal($"/shop/jobs/{job}", (await owner.Send(await owner.Open($"/shop/jobs/edit/{job}"))).Location);

        Assert.Equal(brought, _shop.Database.Dump());
        Assert.IsType<Outcome.Done>(Back(list));
        Assert.Equal(before, Content());
    }

    [Fact]
    public void That_somebody_worked_on_a_ticket_does_not_stand_in_the_way_by_itself()
    {
        var list = Bring();
        _shop.Records.Change("""
            INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, made_at)
            VALUES ('00000000000000000000000000000001', 'bram', 'BRAM', '', '', '', 'Bench', '2026-11-20T10:00:00.000Z');
            INSERT INTO job_deed (job_id, deed, made_at, made_by) SELECT MAX(id), 'Changed', '2026-11-20T10:00:00.000Z', '00000000000000000000000000000001' FROM job;
            """);

        Assert.IsType<Outcome.Done>(Back(list));
        Assert.Equal(0, _shop.Records.Count("job_deed"));
    }

    [Fact]
    public void What_happened_tells_of_the_list_and_of_its_way_back()
    {
        var list = Bring();
        Back(list);

        Assert.Equal($"1205 list {list}: 3 lines, 1206 list {list}", _shop.Records.Text("SELECT group_concat(event || ' ' || detail, ', ' ORDER BY id) FROM audit"));
    }

    private long Bring(string list = List) => OldLists.Bring(_shop, list, s => s with { SettledBefore = new DateOnly(2026, 1, 1), Unit = TagPage.Core.Units.TensionUnit.Lb });

    private Outcome Back(long list)
    {
        var outcome = _shop.Get<TakeBackStore>().Begin(Who.Shop, list);
        _shop.Get<StringingListWorker>().Round();
        return outcome;
    }

    /// <summary>All but that there was a list, that a client's record was saved, and numbers of calendar entries, which only grow; of the search box its words, not how they are indexed.</summary>
    private string Content() => Kept().Replace(Version().Replace(_shop.Database.Dump(), ""), "");

    [GeneratedRegex(@"(?<=name=Tamsin Quill .*)version=\d+|calendar_number=\d+")]
    private static partial Regex Version();

    [GeneratedRegex(@"(?m)^(stringing_list\w*|used_form_key|audit|search\w*_(config|data|docsize|idx))\r?\n(  .*\r?\n)*")]
    private static partial Regex Kept();
}
