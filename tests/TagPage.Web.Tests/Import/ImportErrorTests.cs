using System.Text;
using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

/// <summary>Every way a file can be wrong, reported by file, line and column, with nothing saved.</summary>
public sealed class ImportErrorTests(ImportErrorTests.Shop house) : IClassFixture<ImportErrorTests.Shop>
{
    public sealed class Shop : IDisposable
    {
        public Shop() => ImportedShop.SetUp(House);

        public TestShop House { get; } = new();

        public void Dispose() => House.Dispose();
    }

    [Theory]
    [InlineData("clients.csv", 2, "client", "", "Fill this in: one line, at most 40 characters.")]
    [InlineData("clients.csv", 3, "client", "c1", "“c1” is in this file twice. Give each line its own key.")]
    [InlineData("clients.csv", 2, "name", "", "Fill this in: one line, at most 80 characters.")]
    [InlineData("clients.csv", 2, "phone", "12", "Enter a phone number with all its digits. A number from another country begins with + and the country’s code.")]
    [InlineData("clients.csv", 2, "mail", "odalys", "Enter one email address, like name@example.org.")]
    [InlineData("clients.csv", 2, "language", "xx", "Enter en, es, fr, de, it, pt, ja or zh, not “xx”.")]
    [InlineData("clients.csv", 3, "payer_mail", "pay@er.example", "payer", "Name the payer whose phone or email this is.")]
    [InlineData("clients.csv", 3, "reminders", "perhaps", "Enter yes or no, not “perhaps”.")]
    [InlineData("players.csv", 3, "client", "C9", "“C9” is not in clients.csv. Add it there, or correct it here.")]
    [InlineData("players.csv", 2, "junior", "", "Fill this in: yes or no.")]
    [InlineData("players.csv", 2, "times_a_week", "often", "Enter a number here, like 24.5, not “often”.")]
    [InlineData("players.csv", 2, "times_a_week", "22", "Enter a number from 0 to 21, not 22.")]
    [InlineData("players.csv", 2, "hours_a_time", "8.5", "Enter a number from 0 to 8, not 8.5.")]
    [InlineData("players.csv", 2, "hitting", "brutal", "Enter easy, average or hard, not “brutal”.")]
    [InlineData("players.csv", 2, "rule", "never", "Enter times_a_week, whichever_first, hours, every_weeks or fixed_date, not “never”.")]
    [InlineData("players.csv", 3, "every_weeks", "", "The rule is every_weeks: enter the number of weeks.")]
    [InlineData("strings.csv", 2, "material", "wood", "Enter natural_gut, multifilament, synthetic_gut, polyester or aramid, not “wood”.")]
    [InlineData("strings.csv", 2, "gauge_mm", "0.1", "Enter a number from 0.5 to 1.6, not 0.1.")]
    [InlineData("rackets.csv", 3, "number", "1", "Line 2 already has racket 1 of this player. Give this one another number.")]
    [InlineData("rackets.csv", 2, "number", "1000", "Enter a whole number from 1 to 999, not “1000”.")]
    [InlineData("rackets.csv", 2, "player", "P9", "“P9” is not in players.csv. Add it there, or correct it here.")]
    [InlineData("rackets.csv", 2, "sport", "golf", "Enter tennis, badminton or squash, not “golf”.")]
    [InlineData("rackets.csv", 2, "state", "eaten", "Enter in_turn, spare, resting, damaged, sold or gone, not “eaten”.")]
    [InlineData("rackets.csv", 2, "mains", "7", "Enter a whole number from 8 to 40, not “7”.")]
    [InlineData("rackets.csv", 2, "length_cm", "81", "Enter a number from 40 to 80, not 81.")]
    [InlineData("rackets.csv", 2, "head_size_unit", "ft", "Enter in2 or cm2, not “ft”.")]
    [InlineData("rackets.csv", 2, "lost_since", "2026-11-26", "This day is in the future; today is 25 Nov 2026. Enter the day it happened.")]
    [InlineData("rackets.csv", 2, "own_date", "26/11/2026", "Enter a date as 2027-03-14 (year-month-day), not “26/11/2026”.")]
    [InlineData("rackets.csv", 2, "tag", "0MWF2SBY7KD", "“0MWF2SBY7KD” has a typo in it: the last character does not fit the others. Check the tag again.")]
    [InlineData("rackets.csv", 2, "tag", "short", "“short” is not a tag’s code, which has 11 letters and digits.")]
    [InlineData("rackets.csv", 2, "tag", "W3K21JB5FH1", "retired_tags", "The tag W3K2-1JB5-FH1 is already in line 2. A tag belongs to one racket.")]
    [InlineData("rackets.csv", 3, "retired_tags", "0MWF2SBY7KE", "The tag 0MWF-2SBY-7KE is already in line 2. A tag belongs to one racket.")]
    [InlineData("rackets.csv", 3, "tag", "J6EBTK58YRK", "A racket that is sold or gone has no live tag. Move the code to retired_tags.")]
    [InlineData("specs.csv", 2, "racket", "R9", "“R9” is not in rackets.csv. Add it there, or correct it here.")]
    [InlineData("specs.csv", 2, "measured_on", "", "Fill this in: a date like 2027-03-14.")]
    [InlineData("specs.csv", 2, "weight_g", "5000", "Enter a number from 50 to 500, not 5000.")]
    [InlineData("specs.csv", 2, "stiffness_scale", "", "Name the scale of the stiffness; numbers of different scales cannot be compared.")]
    [InlineData("jobs.csv", 2, "ticket", "0", "Enter a whole number from 1 to 999999999, not “0”.")]
    [InlineData("jobs.csv", 3, "ticket", "901", "Ticket 901 is already in line 2. Each job needs its own number.")]
    [InlineData("jobs.csv", 2, "racket", "R9", "“R9” is not in rackets.csv. Add it there, or correct it here.")]
    [InlineData("jobs.csv", 2, "crosses_string", "S9", "“S9” is not in strings.csv. Add it there, or correct it here.")]
    [InlineData("jobs.csv", 2, "state", "lost", "Enter waiting, on_machine, strung, collected or cancelled, not “lost”.")]
    [InlineData("jobs.csv", 2, "state", "waiting", "strung_on", "The state is “waiting”: leave this empty, or change the state.")]
    [InlineData("jobs.csv", 2, "state", "strung", "collected_on", "The state is “strung”: leave this empty, or change the state.")]
    [InlineData("jobs.csv", 3, "state", "strung", "strung_on", "The state is “strung”: enter the day, or change the state.")]
    [InlineData("jobs.csv", 2, "mains_tension", "2", "No machine pulls 2 lb. Check the number and tension_unit.")]
    [InlineData("jobs.csv", 2, "crosses_tension", "1e2", "Enter a number here, like 24.5, not “1e2”.")]
    [InlineData("jobs.csv", 2, "tension_unit", "stone", "Enter lb or kg, not “stone”.")]
    [InlineData("jobs.csv", 2, "pieces", "3", "Enter a whole number from 1 to 2, not “3”.")]
    [InlineData("jobs.csv", 2, "pieces", "1", "One piece is one string: enter 2, or leave crosses_string empty.")]
    [InlineData("jobs.csv", 3, "received_on", "", "Enter the day it came in.")]
    [InlineData("jobs.csv", 2, "received_on", "2026-02-30", "Enter a date as 2027-03-14 (year-month-day), not “2026-02-30”.")]
    [InlineData("jobs.csv", 2, "strung_on", "2026-08-31", "This is before the day it came in, 1 Sep 2026. Correct one of the two.")]
    [InlineData("jobs.csv", 2, "collected_on", "2026-09-01", "This is before the day it was strung, 2 Sep 2026. Correct one of the two.")]
    [InlineData("jobs.csv", 2, "promised_for", "2026-08-31", "This is before the day it came in, 1 Sep 2026. Correct one of the two.")]
    [InlineData("jobs.csv", 2, "ended_on", "2026-09-01", "This is before the day it was strung, 2 Sep 2026. Correct one of the two.")]
    [InlineData("jobs.csv", 2, "ended_on", "2026-11-26", "This day is in the future; today is 25 Nov 2026. Enter the day it happened.")]
    [InlineData("jobs.csv", 2, "ended_on", "", "Enter the day these strings ended, or leave ended_how empty.")]
    [InlineData("jobs.csv", 2, "ended_how", "", "Enter how these strings ended: wear, mishit, grommet, machine, cut_out or unknown.")]
    [InlineData("jobs.csv", 2, "price", "24.505", "GBP has 2 decimal places.")]
    [InlineData("jobs.csv", 2, "price", "-1", "Enter a number from 0 to 100000, not -1.")]
    [InlineData("jobs.csv", 2, "instrument", "", "Name the instrument of the reading; readings of different instruments cannot be compared.")]
    [InlineData("jobs.csv", 2, "reading", "", "Enter the reading, or leave the instrument empty.")]
    [InlineData("jobs.csv", 3, "reading", "55", "instrument", "Name the instrument of the reading; readings of different instruments cannot be compared.")]
    public void Wrong_cell_is_named_with_what_to_write_instead(string file, int line, string column, string value, params string[] told)
    {
        var blamed = told.Length > 1 ? told[0] : column;
        var sentence = told.Length > 1 ? told[1] : told[0];

        var problems = Refused(new Spreadsheet().Cell(file, line, column, value).ToFiles());

        Assert.Equal($"{file}:{line}:{blamed}: {sentence}", problems[0]);
        Assert.Single(problems, p => p.StartsWith($"{file}:{line}:{blamed}:", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("client,name\n,\nC1,A \"quote\n", "clients.csv:3: There is a stray quotation mark here. Put the whole cell in quotation marks and double each one inside it.")]
    [InlineData("client,name\nC1,A\nC2,\"never closed\nC3,B\n", "clients.csv:3: There is a stray quotation mark here. Put the whole cell in quotation marks and double each one inside it.")]
    [InlineData("client,name\nC1,A,B\n", "clients.csv:2: This line has 3 cells, but the header has 2. A cell with a comma, semicolon or line break in it needs quotation marks around it.")]
    [InlineData("client,name\nC1\n", "clients.csv:2: This line has 1 cells, but the header has 2. A cell with a comma, semicolon or line break in it needs quotation marks around it.")]
    [InlineData("client,name,shoe size\nC1,A,\n", "clients.csv:1:shoe size: This column is unknown. Known columns: client, name, phone, mail, language, payer, payer_phone, payer_mail, reminders, note.")]
    [InlineData("client,name,Name\nC1,A,\n", "clients.csv:1:Name: This column is here twice. Remove one of them.")]
    [InlineData("client,,name\nC1,A,\n", "clients.csv:1: Column 2 has no name. Give it a name, or remove it.")]
    [InlineData("client,phone\nC1,\n", "clients.csv:1:name: This column is missing. Add it: Who is contacted; for a junior, the guardian.")]
    [InlineData("", "clients.csv: The file is empty. Its first line must name the columns.")]
    [InlineData("client,name\n\"C\n1\",\"A\"\nC2,\u0001\n", "clients.csv:2:client: Write this on one line, without tabs or control characters.", "clients.csv:4:name: Write this on one line, without tabs or control characters.")]
    public void Broken_file_is_told_where_it_breaks(string text, params string[] expected) =>
        Assert.Equal(expected, Refused(Files(("clients.csv", Encoding.UTF8.GetBytes(text)))));

    [Fact]
    public void Line_numbers_hold_after_cells_with_line_breaks() => Assert.Equal(
        ["clients.csv:6:mail: Enter one email address, like name@example.org."],
        Refused(Files(("clients.csv", Encoding.UTF8.GetBytes("client,name,mail,note\r\nC1,A,,\"one\r\ntwo\r\nthree\"\r\n\r\nC2,B,nonsense,\r\n")))));

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x63, 0x00 }, "clients.csv: The file is UTF-16. In the spreadsheet program choose “Save as” and the format “CSV UTF-8”, then send that file.")]
    [InlineData(new byte[] { 0x50, 0x4B, 0x03, 0x04 }, "clients.csv: This is not a CSV file but a workbook or an archive. In the spreadsheet program choose “Save as” and the format “CSV UTF-8”, then send that file.")]
    [InlineData(new byte[] { 0x61, 0x0A, 0x62, 0x0A, 0x4D, 0xF6, 0xDF }, "clients.csv:3: From this line on the file is not UTF-8. In the spreadsheet program choose “Save as” and the format “CSV UTF-8”, then send that file.")]
    public void Other_encodings_are_recognised(byte[] bytes, string expected) => Assert.Equal([expected], Refused(Files(("clients.csv", bytes))));

    [Fact]
    public void Too_large_a_file_is_not_read() => Assert.Equal(
        ["clients.csv: The file has more than 20 MB. Split it and send the parts one after the other."],
        Refused(Files(("clients.csv", new byte[20_000_001]))));

    [Fact]
    public void Too_many_lines_are_not_read() => Assert.Equal(
        ["strings.csv:200002: The file has more than 200000 lines. Split it and send the parts one after the other."],
        Refused(Files(("strings.csv", Encoding.UTF8.GetBytes("string,name,material,gauge_mm\n"
            + string.Concat(Enumerable.Range(0, 200_001).Select(i => $"S{i},N{i},aramid,1.1\n")))))));

    [Fact]
    public void File_that_points_at_one_not_sent_says_so_once() => Assert.Equal(
        ["players.csv: This file refers to clients.csv. Send that one too."],
        Refused(new Spreadsheet().Without("clients.csv").Without("rackets.csv").Without("jobs.csv").Without("specs.csv").ToFiles()));

    [Fact]
    public void File_that_does_not_read_is_not_blamed_again_on_every_line_that_points_at_it() => Assert.Equal(
        ["clients.csv:1:nickname: This column is unknown. Known columns: client, name, phone, mail, language, payer, payer_phone, payer_mail, reminders, note."],
        Refused(new Spreadsheet().With("clients.csv", "client,name,phone", "client,nickname,phone").With("clients.csv", "nickname,phone,mail", "name,nickname,mail").ToFiles()));

    [Fact]
    public void Shop_that_is_set_up_takes_no_second_shop() => Assert.Equal(
        ["shop.csv: This shop is already set up. Leave this file out and change the shop under Settings."],
        Refused(Files(("shop.csv", "setting,value\nname,Other\n"u8.ToArray()), ("strings.csv", "string,name,material,gauge_mm\n"u8.ToArray()))));

    [Fact]
    public void Shop_that_is_not_set_up_needs_its_file()
    {
        using var fresh = new TestShop();

        var report = fresh.Get<Importer>().Import(new Spreadsheet().ToFiles(), new ImportChoices(), FormKey.New());

        Assert.Equal("shop.csv: The shop is not set up yet. Set it up first, or add this file.", Assert.Single(report.Problems).ToString());
        Assert.Equal(0, ImportedRows.Count(fresh.Database, "client"));
    }

    private List<string> Refused(ImportFiles files)
    {
        var before = ImportedRows.Count(house.House.Database);
        var report = house.House.Get<Importer>().Import(files, new ImportChoices(), FormKey.New());
        Assert.Equal(before, ImportedRows.Count(house.House.Database));
        return [.. report.Problems.Select(p => p.ToString())];
    }

    private static ImportFiles Files(params (string Name, byte[] Bytes)[] named)
    {
        var files = new ImportFiles();
        foreach (var (name, bytes) in named)
            Assert.True(files.TryAdd(name, bytes));
        return files;
    }
}
