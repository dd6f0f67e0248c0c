using System.Text;
using Dapper;
using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

public sealed class ImportTests : IDisposable
{
    private static readonly string Seed = Path.Combine(AppContext.BaseDirectory, "seed-demo");

    private readonly TestShop _shop = new();

    private Importer Importer => _shop.Get<Importer>();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Whole_folder_of_a_new_shop_comes_in()
    {
        var report = Importer.Import(ImportFiles.From(Seed), new ImportChoices(), FormKey.New());

        Assert.Empty(report.Problems);
        Assert.Equal("20 clients, 25 players, 18 strings, 42 rackets, 40 live tags, 2 retired tags, 24 specs, 6 places, 8 pieces and 224 jobs", report.Summary);
        Assert.Equal("client:20 payer:2 player:25 string_kind:18 racket:42 tag:42 spec:24 frame_place:6 added_mass:8 job:224 reading:190 instrument:2", ImportedRows.Count(_shop.Database));
        var shop = _shop.Database.Read(c => c.QuerySingle<(string Name, string Phone, string Hours)>("SELECT name, phone, (SELECT group_concat(weekday || ' ' || opens_at || '-' || closes_at, ', ') FROM opening_span) FROM shop"));
        Assert.Equal("Ferrygate Racket Bench", shop.Name);
        Assert.Equal("+442079460182", shop.Phone);
        Assert.Equal("2 600-1080, 3 600-1080, 4 600-1080, 5 600-1080, 6 540-780", shop.Hours);
    }

    [Fact]
    public void Values_arrive_as_they_were_written()
    {
        SetUp();

        Assert.Empty(Importer.Import(new Spreadsheet().ToFiles(), new ImportChoices(), FormKey.New()).Problems);

        var job = _shop.Database.Read(c => c.QuerySingle<(string State, double Mains, double Crosses, long Price, string Strung, string Ended, string How, string MainsName, string CrossesName)>("""
            SELECT j.state, j.mains_tension, j.crosses_tension, j.price_minor, j.strung_on, j.ended_on, j.ended_how, m.name, c.name
            FROM job j JOIN string_kind m ON m.id = j.mains_id JOIN string_kind c ON c.id = j.crosses_id
            WHERE j.ticket = 901
            """));
        Assert.Equal(("Collected", 52, 50, 2450, "2026-09-02", "2026-11-20", "Wear", "Heron Spin", "Heron Soft"), job);
        var tags = _shop.Database.Read(c => c.Query<(string Code, string State)>("SELECT code, state FROM tag ORDER BY code").ToList());
        Assert.Equal([("0MWF2SBY7KE", "Live"), ("VMFQQHM1MWF", "Retired"), ("W3K21JB5FH1", "Retired")], tags);
        var player = _shop.Database.Read(c => c.QuerySingle<(string Client, string Phone, string Hitting, double Hours)>("""
            SELECT c.name, c.phone, p.hitting, p.hours_a_time FROM player p JOIN client c ON c.id = p.client_id WHERE p.name = 'Pim'
            """));
        Assert.Equal(("Odalys Ferran", "+442079460958", "Hard", 1.5), player);
    }

    [Fact]
    public void Semicolons_decimal_commas_a_byte_order_mark_spaced_headers_and_guarded_cells_read_the_same()
    {
        SetUp();
        var files = new ImportFiles();
        files.TryAdd("CLIENTS.csv", [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes("Client;Name;PHONE\r\nC1;Odalys;'+44 20 7946 0958\r\n")]);
        files.TryAdd("players.csv", Encoding.UTF8.GetBytes("player;client;name;junior;Times a week;hours a time;note\nP1;c1;Pim;Yes;2,5;\"1,5\";\"'-first line\nand \"\"second\"\"\"\n\n"));

        Assert.Empty(Importer.Import(files, new ImportChoices(), FormKey.New()).Problems);

        var player = _shop.Database.Read(c => c.QuerySingle<(double Times, double Hours, string Note, string Phone)>(
            "SELECT p.times_a_week, p.hours_a_time, p.note, c.phone FROM player p JOIN client c ON c.id = p.client_id"));
        Assert.Equal((2.5, 1.5, "-first line\nand \"second\"", "+442079460958"), player);
    }

    [Fact]
    public void Check_alone_saves_nothing()
    {
        SetUp();
        var before = ImportedRows.Count(_shop.Database);

        var report = Importer.Check(new Spreadsheet().ToFiles(), new ImportChoices());

        Assert.True(report.IsClean);
        Assert.Equal("2 clients, 2 players, 2 strings, 2 rackets, 1 live tag, 2 retired tags, 1 spec and 2 jobs", report.Summary);
        Assert.Equal(before, ImportedRows.Count(_shop.Database));
    }

    [Fact]
    public void Same_form_sent_twice_imports_once()
    {
        SetUp();
        var key = FormKey.New();

        Importer.Import(new Spreadsheet().ToFiles(), new ImportChoices(), key);
        var second = Importer.Import(new Spreadsheet().ToFiles(), new ImportChoices(), key);

        Assert.Empty(second.Problems);
        Assert.Equal(2, ImportedRows.Count(_shop.Database, "job"));
    }

    [Fact]
    public void String_that_the_shop_has_already_is_used_and_not_made_twice()
    {
        SetUp();
        var kind = _shop.Records.Kind("heron spin", "Polyester", 1.25m);

        Assert.Empty(Importer.Import(new Spreadsheet().ToFiles(), new ImportChoices(), FormKey.New()).Problems);

        Assert.Equal(2, ImportedRows.Count(_shop.Database, "string_kind"));
        Assert.Equal(kind, _shop.Database.Read(c => c.ExecuteScalar<long>("SELECT mains_id FROM job WHERE ticket = 901")));
    }

    [Fact]
    public void Unusual_tension_is_pointed_out_and_does_not_stop_the_import()
    {
        SetUp();

        var report = Importer.Import(new Spreadsheet().Cell("jobs.csv", 2, "mains_tension", "70").ToFiles(), new ImportChoices(), FormKey.New());

        Assert.Empty(report.Problems);
        var notice = Assert.Single(report.Notices);
        Assert.Equal("jobs.csv:2:mains_tension: 70 lb is outside the 30 to 65 lb usual in tennis. Above the range printed on the frame, the frame can crack.", notice.ToString());
    }

    [Fact]
    public void Hundred_problems_are_listed_and_the_rest_counted()
    {
        SetUp();
        var files = new ImportFiles();
        files.TryAdd("clients.csv", Encoding.UTF8.GetBytes("client,name\n" + string.Concat(Enumerable.Range(0, 250).Select(i => $"C{i},\n"))));

        var report = Importer.Import(files, new ImportChoices(), FormKey.New());

        Assert.Equal(100, report.Problems.Count);
        Assert.Equal(150, report.MoreProblems);
    }

    private void SetUp() => ImportedShop.SetUp(_shop);
}
