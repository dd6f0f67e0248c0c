using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Web.StringingLists;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.StringingLists;

/// <summary>What becomes of the lines of a list.</summary>
public sealed class ListTests : IDisposable
{
    private const string Tamsin = "Tamsin Quill;Pellmore Meadow 98;2025-03-14;Heron Spin 1.25;52/50";

    private readonly TestShop _shop = new();

    public ListTests() => ImportedShop.SetUp(_shop);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Thirteenth_month_decides_the_order_of_all_days()
    {
        var reading = OldLists.Read(OldLists.List("Tamsin;Meadow;01/02/2025;Heron;52", "Tamsin;Meadow;13/01/2025;Heron;52"));

        Assert.Null(reading.Days);
        Assert.Equal(new DateOnly(2025, 2, 1), reading.Lines[0].Day);
    }

    [Fact]
    public void Order_of_days_that_the_list_does_not_show_is_asked_and_the_answer_holds()
    {
        var list = OldLists.List("Tamsin;Meadow;01/02/2025;Heron;52");

        var asked = OldLists.Read(list);
        var answered = OldLists.Read(list, s => s with { Days = DayOrder.MonthDayYear });

        Assert.Equal("01/02/2025", asked.Days!.Example);
        Assert.Equal((null, new DateOnly(2025, 1, 2)), (answered.Days, answered.Lines[0].Day));
    }

    [Fact]
    public void Order_that_would_lie_in_the_future_is_none() =>
        Assert.Equal(new DateOnly(2026, 1, 12), OldLists.Read(OldLists.List("Tamsin;Meadow;12/01/2026;Heron;52"), s => s with { Days = DayOrder.MonthDayYear }).Lines[0].Day);

    [Fact]
    public void List_that_contradicts_itself_is_asked_and_the_odd_one_is_doubted()
    {
        var list = OldLists.List("Tamsin;Meadow;13/01/2025;Heron;52", "Tamsin;Meadow;01/14/2025;Heron;52", "Tamsin;Meadow;01/02/2025;Heron;52");

        Assert.Equal([DayOrder.DayMonthYear, DayOrder.MonthDayYear], OldLists.Read(list).Days!.Left);
        var answered = OldLists.Read(list, s => s with { Days = DayOrder.DayMonthYear });
        Assert.Equal(["“01/14/2025” can only be 14 Jan 2025; other days in this list are written in another order."], answered.Lines[1].Doubts);
        Assert.Equal(new DateOnly(2025, 2, 1), answered.Lines[2].Day);
    }

    [Fact]
    public void Numbers_that_only_a_spreadsheet_can_have_counted_are_days_beside_written_ones()
    {
        var reading = OldLists.Read(OldLists.List("Tamsin;Meadow;45292;Heron;52", "Tamsin;Meadow;45352.4;Heron;52", "Tamsin;Meadow;2024-05-06;Heron;52"));

        Assert.Null(reading.Counted);
        Assert.Equal([new(2024, 1, 1), new(2024, 3, 1), new(2024, 5, 6)], reading.Lines.Select(line => line.Day));
    }

    [Fact]
    public void Numbers_that_are_days_by_both_counts_are_asked_about_once_and_a_newer_one_decides()
    {
        var old = OldLists.List("Tamsin;Meadow;43830;Heron;52");

        var asked = OldLists.Read(old);
        var answered = OldLists.Read(old, s => s with { Counted = DayCount.Since1904 });

        Assert.Equal(("43830", "31 Dec 2019 or 1 Jan 2024"), (asked.Counted!.Example, ListWords.MayMean(asked.Counted, TestShop.Today)));
        Assert.True(asked.IsOpen);
        Assert.Equal((null, new DateOnly(2024, 1, 1)), (answered.Counted, answered.Lines[0].Day));
        Assert.Equal(new DateOnly(2019, 12, 31), OldLists.Read(OldLists.List("Tamsin;Meadow;43830;Heron;52", "Tamsin;Meadow;45292;Heron;52")).Lines[0].Day);
    }

    [Fact]
    public void Numbers_that_may_be_days_without_their_marks_are_asked_about_or_left_alone()
    {
        var open = OldLists.Read(OldLists.List("Tamsin;Meadow;41224;Heron;52"));
        var others = OldLists.Read(OldLists.List("Tamsin;Meadow;41224;Heron;52", "Tamsin;Meadow;151224;Heron;52"));
        var none = OldLists.Read(OldLists.List("Tamsin;Meadow;41224;Heron;52"), s => s with { Counted = DayCount.NoDays });

        Assert.Equal("41224", open.Counted!.Example);
        Assert.Null(others.Counted);
        Assert.All(others.Lines.Concat(none.Lines), line => Assert.Contains("no day that can be told for sure", line.Refused, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Heron Spin", "1,25 mm", "Heron Spin 1.25", "Heron Spin 1.25")]
    [InlineData("Heron Spin", "1.25/1.30", "Heron Spin 1.25", "Heron Spin 1.30")]
    [InlineData("Heron Spin 1.20 / Heron Soft", "1.30", "Heron Spin 1.20", "Heron Soft ")]
    [InlineData("Heron Spin / Heron Soft", "1.30", "Heron Spin 1.30", "Heron Soft 1.30")]
    [InlineData("Heron Spin", "16L", "Heron Spin 16L ", "Heron Spin 16L ")]
    [InlineData("Heron Spin 16L", "16L", "Heron Spin 16L ", "Heron Spin 16L ")]
    [InlineData("Heron Spin 1.25", "1.25", "Heron Spin 1.25", "Heron Spin 1.25")]
    public void Gauge_of_its_own_column_is_the_strings(string strings, string gauge, string mains, string crosses)
    {
        var line = OldLists.Read($"Client;Date;String;Gauge\nTamsin;2025-01-13;{strings};{gauge}\n".Replace(';', '\t')).Lines[0];

        Assert.Equal((mains, crosses), (Said(line.Mains), Said(line.Crosses)));

        static string Said(StringText text) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{text.Name} {text.GaugeMm:0.00}");
    }

    [Fact]
    public void Gauge_that_is_none_or_another_than_the_string_says_stands_in_the_note()
    {
        var lines = OldLists.Read("Client;Date;String;Gauge;Tension\nTamsin;2025-01-13;Heron Spin;thin;52\nTamsin;2025-01-14;Heron Spin 1.25;1.30;52\nTamsin;2025-01-15;?;1.30;52\n").Lines;

        Assert.Equal(["Gauge: thin"], lines[0].Notes);
        Assert.Equal((1.25m, "Gauge: 1.30"), (lines[1].Mains.GaugeMm, Assert.Single(lines[1].Notes)));
        Assert.Equal(["Gauge: 1.30", "String: ?"], lines[2].Notes);
    }

    [Fact]
    public void Decimals_that_the_list_does_not_show_are_asked()
    {
        const string List = "Client;Date;Price\nTamsin;2025-01-13;1.234";

        Assert.Equal("1.234", OldLists.Read(List).Decimals!.Example);
        Assert.Equal(123400, OldLists.Read(List, s => s with { Decimals = DecimalMark.Comma }).Lines[0].PriceMinor);
        Assert.Equal(123400, OldLists.Read(List + "\nTamsin;2025-01-14;24,50").Lines[0].PriceMinor);
    }

    [Theory]
    [InlineData("52", Sport.Tennis, TensionUnit.Lb)]
    [InlineData("24", Sport.Tennis, TensionUnit.Kg)]
    [InlineData("11", Sport.Badminton, TensionUnit.Kg)]
    public void Unit_is_told_by_what_is_usual_in_the_sport(string tension, Sport sport, TensionUnit unit)
    {
        var reading = OldLists.Read(OldLists.List($"Tamsin;Meadow;2025-01-13;Heron;{tension}"), s => s with { Sport = sport });

        Assert.Equal((null, unit), (reading.Unit, reading.Lines[0].Tension!.Unit));
    }

    [Fact]
    public void Unit_of_a_list_with_both_is_asked() =>
        Assert.Equal("52", OldLists.Read(OldLists.List("Tamsin;Meadow;2025-01-13;Heron;52", "Tamsin;Meadow;2025-01-14;Heron;24")).Unit!.Example);

    [Fact]
    public void Unit_in_the_heading_holds_for_all() =>
        Assert.Equal(TensionUnit.Kg, OldLists.Read("Client;Date;Tension (kg)\nTamsin;2025-01-13;30").Lines[0].Tension!.Unit);

    [Fact]
    public void What_cannot_be_read_stands_in_the_note_of_the_job()
    {
        OldLists.Bring(_shop, "Client;Racket;Date;String;Tension;Price;Loyalty\nTamsin Quill;Meadow;2025-03-14;?;?;a drink;gold\n");

        Assert.Equal("String: ?\nTension: ?\nPrice: a drink\nLoyalty: gold\nWritten down for the tension: 52 lb", _shop.Records.Text("SELECT note FROM job"));
        Assert.Equal("String not known", _shop.Records.Text("SELECT k.name FROM job j JOIN string_kind k ON k.id = j.mains_id"));
    }

    [Theory]
    [InlineData("£24.50", 2450, 0)]
    [InlineData("24.50 GBP", 2450, 0)]
    [InlineData("24.50", 2450, 0)]
    [InlineData("$24", null, 1)]
    [InlineData("24.50 €", null, 1)]
    [InlineData("USD 24.50", null, 1)]
    [InlineData("24,50 kr.", null, 1)]
    public void Price_in_another_currency_is_doubted_and_stands_in_the_note(string text, int? minor, int doubts)
    {
        var line = OldLists.Read($"Client;Date;Price\nTamsin;2025-01-13;{text}", s => s with { Columns = [ListColumn.Client, ListColumn.Day, ListColumn.Price] }).Lines[0];

        Assert.Equal((minor, doubts), ((int?)line.PriceMinor, line.Doubts.Count(doubt => doubt == $"Price “{text}”: not in GBP; it stands in the job’s note.")));
        Assert.Equal(doubts, line.Notes.Count(note => note == $"Price: {text}"));
    }

    [Fact]
    public void Phone_number_without_its_area_goes_to_the_note()
    {
        var line = OldLists.Read("Client;Phone;Date\nTamsin;0163 123;2025-01-13").Lines[0];

        Assert.Equal((null, 1), (line.Phone, line.Notes.Count(note => note == "Phone: 0163 123")));
    }

    [Theory]
    [InlineData(";Meadow;2025-03-14;Heron;52", "No client is named.")]
    [InlineData("Tamsin;Meadow;soon;Heron;52", "“soon” is no day that can be told for sure.")]
    [InlineData("Tamsin;Meadow;2027-03-14;Heron;52", "The day is in the future; today is 25 Nov 2026.")]
    [InlineData("Tamsin;Meadow;2025-03-14;Heron;52;more", "This line has 6 cells, but the first one has 5. A cell with a separator or a line break in it needs quotation marks around it.")]
    public void Line_that_is_no_stringing_is_refused_with_its_reason(string line, string reason) =>
        Assert.Equal(reason, OldLists.Plan(_shop, OldLists.List(Tamsin, line)).Plan.Lines[1].Reasons[0]);

    [Fact]
    public void Formula_stays_data()
    {
        OldLists.Bring(_shop, OldLists.List("=HYPERLINK(1);@SUM(A1);2025-03-14;+Spin 1.25;52"));

        Assert.Equal("=HYPERLINK(1)|@SUM(A1)|+Spin", _shop.Records.Text("SELECT c.name || '|' || r.frame || '|' || k.name FROM client c, racket r, string_kind k"));
    }

    [Fact]
    public void Same_stringing_twice_in_a_list_comes_in_once_if_it_is_one_racket()
    {
        var one = OldLists.Plan(_shop, OldLists.List(Tamsin, Tamsin)).Plan;
        var several = OldLists.Plan(_shop, OldLists.List(Tamsin, Tamsin), s => s with { OtherRackets = RacketQuestion.Several }).Plan;
        var open = OldLists.Plan(_shop, OldLists.List(Tamsin, Tamsin), s => s with { OtherRackets = null }).Plan;

        Assert.Equal((LineState.There, "This stringing stands in line 2 already."), (one.Lines[1].State, one.Lines[1].Reasons[0]));
        Assert.Equal(2, several.Count(LineState.Doubted));
        Assert.Equal((false, 2), (open.IsComplete, Assert.Single(open.Rackets).MostOnADay));
    }

    [Fact]
    public void Second_upload_of_a_list_finds_all_of_it()
    {
        var list = OldLists.List(Tamsin, Tamsin, "Odalys Ferran;Dunmarrow;2025-04-01;Heron Soft;24x23 kg", "Odalys Ferran;;2025-04-02;?;?");
        static ListSettings Several(ListSettings s) => s with { OtherRackets = RacketQuestion.Several, Unit = TensionUnit.Lb };
        OldLists.Bring(_shop, list, Several);
        var before = _shop.Database.Dump();

        var plan = OldLists.Plan(_shop, list, s => Several(s) with { Strings = new Dictionary<string, StringAnswer> { ["?"] = new(long.Parse(_shop.Records.Text("SELECT id FROM string_kind WHERE name = 'String not known'"), System.Globalization.CultureInfo.InvariantCulture), null, null) } }).Plan;

        Assert.Equal(4, plan.Count(LineState.There));
        Assert.Equal(before, _shop.Database.Dump());
        Assert.Equal("1, 2", _shop.Records.Text("SELECT group_concat(r.number, ', ' ORDER BY r.number) FROM racket r JOIN player p ON p.id = r.player_id WHERE p.name = 'Tamsin Quill'"));
    }

    [Fact]
    public void Racket_and_missing_phone_number_of_a_client_on_file_are_found()
    {
        var client = _shop.Records.Client("Tamsin Quill");
        var racket = _shop.Records.Racket(_shop.Records.Player(client, "Tamsin Quill"), 3);
        const string List = "Client;Phone;Racket;Date;String;Tension\nTamsin Quill;020 7946 0958;pellmore MEADOW 98;2025-03-14;Heron Spin 1.25;52";

        Assert.Equal(LineState.Changed, Assert.Single(OldLists.Plan(_shop, List).Plan.Lines).State);
        OldLists.Bring(_shop, List);

        Assert.Equal((racket.ToString(System.Globalization.CultureInfo.InvariantCulture), "+442079460958"), (_shop.Records.Text("SELECT racket_id FROM job"), _shop.Records.Text("SELECT phone FROM client")));
    }

    [Fact]
    public void List_without_players_finds_the_clients_only_player_who_is_on_file_by_the_given_name()
    {
        var racket = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Tamsin Quill"), "Tamsin"));
        OldLists.Bring(_shop, OldLists.List(Tamsin));

        Assert.Equal(LineState.There, Assert.Single(OldLists.Plan(_shop, OldLists.List(Tamsin)).Plan.Lines).State);
        Assert.Equal(($"{racket}", 1, 1), (_shop.Records.Text("SELECT racket_id FROM job"), _shop.Records.Count("player"), _shop.Records.Count("racket")));
    }

    [Fact]
    public void Of_several_rackets_with_the_frame_it_is_the_one_on_which_the_stringing_is_on_file()
    {
        var player = _shop.Records.Player(_shop.Records.Client("Tamsin Quill"), "Tamsin");
        OldLists.Bring(_shop, OldLists.List(Tamsin));
        _shop.Records.Racket(player, 2);

        static ListSettings Asking(ListSettings s) => s with { OtherRackets = null };
        var there = OldLists.Plan(_shop, OldLists.List(Tamsin), Asking).Plan;
        var twice = OldLists.Plan(_shop, OldLists.List(Tamsin, Tamsin), Asking).Plan;
        var other = OldLists.Plan(_shop, OldLists.List(Tamsin.Replace("52/50", "48", StringComparison.Ordinal)), Asking).Plan;

        Assert.Equal((true, LineState.There), (there.IsComplete, there.Lines[0].State));
        Assert.Equal((1, 1), (twice.OpenRackets.Count, other.OpenRackets.Count));
    }

    [Fact]
    public void Player_named_in_full_is_the_one_on_file_by_the_given_name()
    {
        var client = _shop.Records.Client("Tamsin Quill");
        var (tamsin, pip) = (_shop.Records.Racket(_shop.Records.Player(client, "Tamsin")), _shop.Records.Racket(_shop.Records.Player(client, "Pip")));

        OldLists.Bring(_shop, "Client;Player;Racket;Date;String;Tension\nTamsin Quill;Tamsin Quill;Pellmore Meadow 98;2025-03-14;Heron Spin 1.25;52\nTamsin Quill;Pip Quill;Pellmore Meadow 98;2025-03-15;Heron Spin 1.25;52");

        Assert.Equal($"{tamsin}, {pip}", _shop.Records.Text("SELECT group_concat(racket_id, ', ' ORDER BY strung_on) FROM job"));
    }

    [Fact]
    public void Of_several_players_the_one_who_has_the_frame_is_meant()
    {
        var client = _shop.Records.Client("Tamsin Quill");
        _shop.Records.Player(client, "Tamsin");
        var racket = _shop.Records.Racket(_shop.Records.Player(client, "Pip"));

        OldLists.Bring(_shop, OldLists.List(Tamsin));

        Assert.Equal(($"{racket}", 2, 1), (_shop.Records.Text("SELECT racket_id FROM job"), _shop.Records.Count("player"), _shop.Records.Count("racket")));
    }

    [Fact]
    public void Of_several_players_with_the_frame_it_is_the_one_whose_racket_was_strung_that_day()
    {
        var client = _shop.Records.Client("Tamsin Quill");
        var pip = _shop.Records.Racket(_shop.Records.Player(client, "Pip"));
        OldLists.Bring(_shop, OldLists.List(Tamsin));
        _shop.Records.Racket(_shop.Records.Player(client, "Odo"));

        var plan = OldLists.Plan(_shop, OldLists.List(Tamsin, Tamsin.Replace("52/50", "48", StringComparison.Ordinal), Tamsin.Replace("14", "15", StringComparison.Ordinal)), s => s with { OtherRackets = null }).Plan;

        Assert.Equal(LineState.There, plan.Lines[0].State);
        Assert.Equal((pip, "No player is named; taken for Pip, who has this frame, strung on this day."), (plan.Lines[1].Write!.RacketId, plan.Lines[1].Reasons[0]));
        Assert.Equal(["Odo", "Pip"], plan.Rackets.Single(q => q.Among.Count > 0).OnFile.Select(r => plan.Rackets.Single(q => q.Among.Count > 0).PlayerOf(r)).Order());
    }

    [Theory]
    [InlineData("player", "Odo, 2")]
    [InlineData("new", "Tamsin Quill, 3")]
    public void Racket_of_none_of_several_players_is_asked_about(string answer, string becomes)
    {
        var client = _shop.Records.Client("Tamsin Quill");
        _shop.Records.Racket(_shop.Records.Player(client, "Pip"), frame: "Another");
        var odo = _shop.Records.Player(client, "Odo");
        var open = OldLists.Plan(_shop, OldLists.List(Tamsin), s => s with { OtherRackets = null }).Plan;
        var question = Assert.Single(open.Rackets);
        Assert.Equal((question.Key, 2), (Assert.Single(open.OpenRackets), question.Among.Count));

        OldLists.Bring(_shop, OldLists.List(Tamsin), s => s with { Rackets = new Dictionary<string, string> { [question.Key] = answer == "player" ? $"player{odo}" : answer } });

        Assert.Equal(becomes, _shop.Records.Text("SELECT p.name || ', ' || (SELECT COUNT(*) FROM player) FROM job j JOIN racket r ON r.id = j.racket_id JOIN player p ON p.id = r.player_id"));
    }

    [Fact]
    public void Of_several_players_without_the_frame_the_one_of_the_clients_name_is_taken_in_doubt()
    {
        var client = _shop.Records.Client("Tamsin Quill");
        _shop.Records.Player(client, "Pip");
        _shop.Records.Player(client, "Tamsin");

        var line = Assert.Single(OldLists.Plan(_shop, OldLists.List(Tamsin)).Plan.Lines);

        Assert.Equal(("Tamsin", LineState.Doubted, "No player is named; taken for Tamsin, by name."), (line.Write!.Player, line.State, line.Reasons[0]));
    }

    [Fact]
    public void Frame_on_file_keeps_its_sport_when_one_was_said_for_the_whole_list()
    {
        var racket = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Tamsin Quill"), "Tamsin"));
        _shop.Records.Change("UPDATE racket SET sport = 'Squash'");
        const string List = "Client;Racket;Date;String;Tension\nTamsin Quill;Pellmore Meadow 98;2025-03-14;Heron Spin 1.25;26 lb";

        var said = Assert.Single(OldLists.Plan(_shop, List).Plan.Lines);
        var named = Assert.Single(OldLists.Plan(_shop, List.Replace("Tension\n", "Tension;Sport\n", StringComparison.Ordinal) + ";tennis").Plan.Lines);

        Assert.Equal((racket, Sport.Squash), (said.Write!.RacketId, said.Write.Sport));
        Assert.Equal((LineState.Doubted, "Taken for racket 1 on file, which is for squash."), (said.State, Assert.Single(said.Reasons)));
        Assert.Equal((null, Sport.Tennis), (named.Write!.RacketId, named.Write.Sport));
    }

    [Fact]
    public void Client_who_may_be_on_file_is_asked_about()
    {
        _shop.Records.Client("Tamsin Quill");

        Assert.Equal("Tamsin Quill", Assert.Single(OldLists.Plan(_shop, OldLists.List(Tamsin), others: OtherMatches.MergeSure).Plan.Undecided).Client.Name);
    }

    [Fact]
    public void Old_stringings_are_collected_and_paid_and_newer_ones_wait()
    {
        OldLists.Bring(_shop, OldLists.List(Tamsin, "Tamsin Quill;Pellmore Meadow 98;2026-11-20;Heron Spin 1.25;52/50"), s => s with { SettledBefore = new DateOnly(2026, 10, 26) });

        Assert.Equal("Collected 2025-03-14, Strung ", _shop.Records.Text("SELECT group_concat(state || ' ' || COALESCE(paid_on, ''), ', ' ORDER BY id) FROM job"));
    }

    [Fact]
    public void Household_longer_than_one_transaction_stays_one_client_with_its_rackets()
    {
        OldLists.Bring(_shop, OldLists.List([.. Enumerable.Range(0, 500).Select(i => $"Harbour Club;Frame {i % 7};{new DateOnly(2020, 1, 1).AddDays(i):yyyy-MM-dd};Heron Spin 1.25;52")]));

        Assert.Equal((1, 1, 7, 500), (_shop.Records.Count("client"), _shop.Records.Count("player"), _shop.Records.Count("racket"), _shop.Records.Count("job")));
        Assert.Equal(500, _shop.Records.Count("job", "ticket BETWEEN 1 AND 500"));
    }

    [Fact]
    public void Line_whose_client_was_deleted_meanwhile_is_counted_and_the_others_come_in()
    {
        var client = _shop.Records.Client("Tamsin Quill");
        var plan = OldLists.Plan(_shop, OldLists.List(Tamsin, "Odalys Ferran;Dunmarrow;2025-04-01;Heron Spin 1.25;52"), s => OldLists.Polyester(s, ["HERON SPIN 1.25"])).Plan;
        var list = ((Outcome.Done)_shop.Get<StringingListStore>().Begin(Who.Shop, new StringingListEntry { FormKey = FormKey.New(), Lines = [.. plan.Lines.Select(l => l.Write!)], Headings = "[]" })).Id;
        _shop.Records.Change("DELETE FROM client WHERE id = @client", new { client });

        _shop.Get<StringingListWorker>().Round();

        Assert.Equal((1, 1), (_shop.Get<StringingListStore>().Get(list)!.Missed, _shop.Records.Count("job")));
    }
}
