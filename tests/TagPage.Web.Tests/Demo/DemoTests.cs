using System.Text;
using Dapper;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using TagPage.Core.Forecast;
using TagPage.Records.Accounts;
using TagPage.Records.Demo;
using TagPage.Records.DueDates;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Start.Demo;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.Demo;

public sealed class DemoTests : IDisposable
{
    private static readonly DateOnly AsOf = new(2026, 11, 25);

    private readonly TestShop _shop = new();

    private DemoShop Demo => _shop.Get<DemoShop>();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void First_start_fills_the_shop_from_its_files()
    {
        Demo.Prepare();

        Assert.Equal("client:20 payer:2 player:25 string_kind:18 racket:42 tag:42 spec:24 frame_place:6 added_mass:8 job:226 reading:195 instrument:2", ImportedRows.Count(_shop.Database));
        Assert.Equal("Ferrygate Racket Bench", _shop.Get<ShopStore>().Get().Name);
        Assert.StartsWith("I am Runa", _shop.Get<ShopStore>().Get().HomeMarkdown, StringComparison.Ordinal);
        Assert.Equal("0MWF2SBY7KE", Demo.Showcase.ToString());
    }

    [Fact]
    public async Task Lost_racket_has_its_story_in_the_log_and_a_found_page_that_shows_the_contact()
    {
        Demo.Prepare();
        var card = await _shop.Owner().Open($"/shop/rackets/{_shop.Get<DemoStore>().Lost!.RacketId}");
        var page = await _shop.Stranger().FoundPage(Demo.Lost!.Value);

        Assert.Equal("3CKZ477SBMG", Demo.Lost.ToString());
        Assert.Equal(3, card.Document.QuerySelectorAll(".log > li").Length);
        Assert.Contains("It is at the desk of the sports hall now", card.Main, StringComparison.Ordinal);
        Assert.True(page.HasForm("/contact"));
        Assert.Contains("Left on the bench at court 3", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task First_racket_shows_what_was_learned_from_its_readings()
    {
        Demo.Prepare();

        var card = await _shop.Owner().Open("/shop/rackets/1");

        Assert.Contains("learned from 5 readings", card.Main, StringComparison.Ordinal);
        Assert.NotEmpty(card.Document.QuerySelectorAll("svg.loss circle"));
    }

    [Fact]
    public void Story_moves_on_with_the_days()
    {
        Demo.Prepare();
        var before = Instants();

        _shop.Clock.Advance(TimeSpan.FromDays(5));
        Demo.Prepare();

        Assert.Equal(before.Select(i => i.AddDays(5)), Instants());

        List<DateTimeOffset> Instants() => _shop.Database.Read(c => c.Query<DateTimeOffset>("SELECT at FROM found_event ORDER BY id").ToList());
    }

    [Fact]
    public void Dates_are_moved_to_today_at_the_first_start()
    {
        _shop.Clock.Advance(TimeSpan.FromDays(100));

        Demo.Prepare();

        Assert.Equal(AsOf.AddDays(100), Day("SELECT received_on FROM job WHERE ticket = 1922"));
        Assert.Equal(new DateOnly(2025, 7, 7).AddDays(100), Day("SELECT strung_on FROM job WHERE ticket = 1711"));
        Assert.Equal(new DateOnly(2026, 11, 21).AddDays(100), Day("SELECT lost_since FROM racket WHERE lost_since IS NOT NULL"));
    }

    [Fact]
    public void Later_start_moves_every_day_on_and_keeps_what_a_visitor_changed()
    {
        Demo.Prepare();
        _shop.Database.Write(c => c.Execute("UPDATE client SET name = 'Changed' WHERE id = 1"));
        var before = AllDays();

        // A week, so that promises stay on the weekdays on which the shop is open.
        _shop.Clock.Advance(TimeSpan.FromDays(7));
        Demo.Prepare();

        Assert.Equal(before.Select(d => d.AddDays(7)), AllDays());
        Assert.Equal("Changed", _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT name FROM client WHERE id = 1")));
    }

    [Fact]
    public void Nobody_is_promised_a_day_on_which_the_shop_is_closed_however_long_the_demo_lives()
    {
        for (var day = 0; day < 30; day++)
        {
            Demo.Prepare();
            var opening = _shop.Get<ShopStore>().Get().Opening;
            var open = _shop.Get<BenchStore>().Open().Where(job => job.PromisedFor is not null).ToList();

            Assert.Equal(5, open.Count);
            Assert.All(open, job => Assert.True(opening.IsOpen(job.PromisedFor!.Value), $"Ticket {job.Ticket}: {job.PromisedFor:dddd d MMM}"));
            Assert.All(open, job => Assert.InRange(job.PromisedFor!.Value.DayNumber - job.ReceivedOn.DayNumber, 1, 5));
            _shop.Clock.Advance(TimeSpan.FromDays(1));
        }
    }

    [Fact]
    public void Second_start_on_one_day_changes_nothing()
    {
        Demo.Prepare();
        var before = AllDays();

        Demo.Prepare();

        Assert.Equal(before, AllDays());
    }

    [Fact]
    public void Day_begins_in_the_shops_time_zone_and_not_at_noon_in_greenwich()
    {
        Demo.Prepare();
        _shop.Database.Write(c => c.Execute("UPDATE shop SET time_zone = 'Asia/Tokyo'"));

        _shop.Clock.Advance(TimeSpan.FromHours(6));
        Demo.Prepare();

        Assert.Equal(AsOf.AddDays(1), _shop.Get<DemoStore>().Day);
    }

    [Fact]
    public void Bench_has_work_and_the_due_list_has_names_on_it()
    {
        Demo.Prepare();
        var shop = _shop.Get<ShopStore>().Get();
        var states = _shop.Database.Read(c => c.Query<ForecastRow>($"SELECT {ForecastRow.Columns} FROM forecast f").ToList())
            .Select(r => r.Work(AsOf, shop.StartingValues).State).CountBy(s => s).ToDictionary();

        Assert.Equal((7, 5), (states[RestringState.Past], states[RestringState.DueSoon]));
        Assert.Equal(5, Count("SELECT COUNT(*) FROM job WHERE state IN ('Waiting', 'OnMachine')"));
        Assert.Equal(3, Count("SELECT COUNT(*) FROM job WHERE state = 'Strung'"));
    }

    [Fact]
    public void Every_column_that_holds_a_day_is_moved()
    {
        _ = _shop.Services;
        var days = _shop.Database.Read(c => c.Query<(string Table, string Sql)>("SELECT name, sql FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'search%'")
            .SelectMany(t => c.Query<(string Name, string Type)>("SELECT name, type FROM pragma_table_info(@Table)", new { t.Table })
                .Where(n => n.Type == "TEXT" && IsDay(n.Name, t.Sql)).Select(n => $"{t.Table}.{n.Name}")).Order().ToList());

        Assert.NotEmpty(days);
        Assert.Equal(days, DemoDates.Columns.SelectMany(t => t.Value.Select(n => $"{t.Key}.{n}")).Order());
    }

    [Fact]
    public void Real_shop_is_left_alone()
    {
        ImportedShop.SetUp(_shop);

        var refused = Assert.Throws<CannotStartException>(Demo.Prepare);

        Assert.Contains("holds a shop of its own", refused.Message, StringComparison.Ordinal);
        Assert.Equal(0, ImportedRows.Count(_shop.Database, "client"));
    }

    [Fact]
    public async Task Password_signs_in_and_stands_in_no_file_and_no_log()
    {
        Demo.Prepare();

        var password = await Password();

        Assert.Matches("^([a-z2-9]{4}-){3}[a-z2-9]{4}$", password);
        Assert.True(await Fits(password!));
        Assert.Empty(FilesWith(password!));
        Assert.DoesNotContain(_shop.Log.All, l => l.Contains(password!, StringComparison.Ordinal));
        // The search would find it: the owner's name is in the database.
        Assert.NotEmpty(FilesWith(DemoPeople.Owner));
    }

    [Fact]
    public async Task Helper_signs_in_with_a_password_of_their_own_and_is_no_owner()
    {
        Demo.Prepare();
        using var scope = _shop.Services.CreateScope();
        var told = await scope.ServiceProvider.GetRequiredService<DemoPeople>().Draw(renew: false);

        Assert.NotEqual(told!.Owner, told.Helper);
        var bram = _shop.Stranger();
        await bram.Send(await bram.Open("/account/sign-in"), ("Input.Name", DemoPeople.Helper), ("Input.Password", told.Helper));
        Assert.Contains("Bench", (await bram.Open("/shop")).Main, StringComparison.Ordinal);
        Assert.Equal(System.Net.HttpStatusCode.Forbidden, (await bram.Get("/shop/people")).StatusCode);
    }

    [Fact]
    public async Task Every_room_of_the_shop_has_something_to_see()
    {
        Demo.Prepare();
        var runa = _shop.Owner();

        foreach (var (page, says) in new[]
        {
            ("/shop/machines", "constant pull"), ("/shop", "drop-weight"), ("/shop", "New grip"), ("/shop/loans", "demo 1"), ("/shop/round", "Club desk, Lido Lane"),
            ("/shop/rackets/2", "Visits without stringing"), ("/shop/stock", "Tarnholm Slate"), ("/shop/found", "desk of the sports hall"),
        })
            Assert.Contains(says, (await runa.Open(page)).Main, StringComparison.Ordinal);
        Assert.Equal((1, 1, 4, 1), (_shop.Records.Count("photo"), _shop.Records.Count("condition"), _shop.Records.Count("machine_check"), _shop.Records.Count("prepaid")));
    }

    [Fact]
    public async Task Password_is_told_once_unless_a_new_one_is_wished_for()
    {
        Demo.Prepare();
        var lost = await Password();
        var first = await Password();
        _shop.Get<DemoStore>().SetTold(true);

        Assert.Null(await Password());
        Assert.True(await Fits(first!));
        Assert.False(await Fits(lost!));

        var second = await Password(renew: true);

        Assert.True(await Fits(second!));
        Assert.False(await Fits(first!));
    }

    private async Task<string?> Password(bool renew = false)
    {
        using var scope = _shop.Services.CreateScope();
        return (await scope.ServiceProvider.GetRequiredService<DemoPeople>().Draw(renew))?.Owner;
    }

    private async Task<bool> Fits(string password)
    {
        using var scope = _shop.Services.CreateScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        return await users.CheckPasswordAsync((await users.FindByNameAsync(DemoPeople.Owner))!, password);
    }

    private IEnumerable<string> FilesWith(string text) =>
        Directory.EnumerateFiles(_shop.Folder, "*", SearchOption.AllDirectories).Where(f => new FileInfo(f).Length > 0 && Contains(f, Encoding.UTF8.GetBytes(text)));

    private static bool Contains(string file, ReadOnlySpan<byte> text)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.GetBuffer().AsSpan(0, (int)bytes.Length).IndexOf(text) >= 0;
    }

    private static bool IsDay(string column, string sql) =>
        sql.Contains($"{column} GLOB '????-??-??'", StringComparison.Ordinal)
        || column.EndsWith("_on", StringComparison.Ordinal) || column.EndsWith("_since", StringComparison.Ordinal) || column.EndsWith("_date", StringComparison.Ordinal);

    private List<DateOnly> AllDays() => _shop.Database.Read(c => DemoDates.Columns
        .SelectMany(t => t.Value.SelectMany(n => c.Query<DateOnly>($"SELECT {n} FROM {t.Key} WHERE {n} IS NOT NULL ORDER BY {n}"))).ToList());

    private DateOnly Day(string sql) => _shop.Database.Read(c => c.QuerySingle<DateOnly>(sql));

    private long Count(string sql) => _shop.Database.Read(c => c.ExecuteScalar<long>(sql));
}
