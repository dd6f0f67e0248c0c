using System.Globalization;
using System.Text;
using TagPage.Core.Units;
using TagPage.Web.StringingLists;

namespace TagPage.Web.Tests.StringingLists;

/// <summary>What cells of lists mean. Reading tables: how people write is common practice, no source.</summary>
public sealed class ReadingTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    [Theory]
    [InlineData("52", 52, 52, null)]
    [InlineData("52/50", 52, 50, null)]
    [InlineData("52 / 50 lbs", 52, 50, TensionUnit.Lb)]
    [InlineData("24x25 kg", 24, 25, TensionUnit.Kg)]
    [InlineData("24 × 23,5kg", 24, 23.5, TensionUnit.Kg)]
    [InlineData("23.50", 23.5, 23.5, null)]
    [InlineData("23,5/23", 23.5, 23, null)]
    [InlineData("52-50", 52, 50, null)]
    [InlineData("55#", 55, 55, TensionUnit.Lb)]
    [InlineData("55 libras", 55, 55, TensionUnit.Lb)]
    [InlineData("25 Kilo", 25, 25, TensionUnit.Kg)]
    [InlineData("25kg / 24kg", 25, 24, TensionUnit.Kg)]
    [InlineData("２４ポンド", 24, 24, TensionUnit.Lb)]
    [InlineData("26磅", 26, 26, TensionUnit.Lb)]
    public void Tension_is_read(string text, double mains, double crosses, TensionUnit? unit) =>
        Assert.Equal(new TensionReading((decimal)mains, (decimal)crosses, unit), TensionText.Read(text));

    [Theory]
    [InlineData("?")]
    [InlineData("")]
    [InlineData("tight")]
    [InlineData("16x19")]
    [InlineData("18x20")]
    [InlineData("50-52")]
    [InlineData("52,50")]
    [InlineData("24.23")]
    [InlineData("52kg/50lb")]
    [InlineData("52/50/48")]
    [InlineData("1.234")]
    [InlineData("-5")]
    [InlineData("0")]
    public void What_may_mean_two_things_or_nothing_is_no_tension(string text) => Assert.Null(TensionText.Read(text));

    [Theory]
    [InlineData("2025-01-13", "2025-01-13")]
    [InlineData("2025/1/13", "2025-01-13")]
    [InlineData("20250113", "2025-01-13")]
    [InlineData("13/01/2025", "2025-01-13")]
    [InlineData("01/13/2025", "2025-01-13")]
    [InlineData("13.1.25", "2025-01-13")]
    [InlineData("3.2.2025", "2025-02-03")]
    [InlineData("13/01/2025 17:30", "2025-01-13")]
    [InlineData("2025-01-13T17:30:00", "2025-01-13")]
    [InlineData("13 Jan 2025", "2025-01-13")]
    [InlineData("Jan 13, 2025", "2025-01-13")]
    [InlineData("13-Jan-25", "2025-01-13")]
    [InlineData("Mo, 13. Januar 2025", "2025-01-13")]
    [InlineData("13. März 2025", "2025-03-13")]
    [InlineData("13 de enero de 2025", "2025-01-13")]
    [InlineData("13 janv. 2025", "2025-01-13")]
    [InlineData("1er février 2025", "2025-02-01")]
    [InlineData("13 gennaio 2025", "2025-01-13")]
    [InlineData("13 de março de 2025", "2025-03-13")]
    [InlineData("2025年1月13日", "2025-01-13")]
    [InlineData("05/05/99", "1999-05-05")]
    [InlineData("27/11/2025", "2025-11-27")]
    public void Day_is_read(string text, string day) => Assert.Equal(DateOnly.Parse(day, CultureInfo.InvariantCulture), DayText.Read(text, Today)?.Clear);

    [Theory]
    [InlineData("01/02/2025", "2025-02-01", "2025-01-02")]
    [InlineData("5-4-2024", "2024-04-05", "2024-05-04")]
    public void Day_that_may_be_another_is_read_both_ways(string text, string dayFirst, string monthFirst)
    {
        var reading = DayText.Read(text, Today)!;

        Assert.Null(reading.Clear);
        Assert.Equal((dayFirst, monthFirst), (reading.ByOrder[DayOrder.DayMonthYear].ToString("O", CultureInfo.InvariantCulture), reading.ByOrder[DayOrder.MonthDayYear].ToString("O", CultureInfo.InvariantCulture)));
    }

    [Theory]
    [InlineData("?")]
    [InlineData("soon")]
    [InlineData("31/02/2025")]
    [InlineData("2025-13-13")]
    [InlineData("13/2025")]
    [InlineData("1.2.3.4")]
    [InlineData("13 Juniper 2025")]
    [InlineData("=2025-01-13")]
    [InlineData("٣/١/٢٠٢٥")]
    public void What_is_no_day_is_not_read(string text) => Assert.Null(DayText.Read(text, Today));

    /// <summary>Source: short date patterns of all locales in the Unicode CLDR, as ICU brings them.</summary>
    [Fact]
    public void No_locale_writes_the_month_before_the_day_with_dots_and_the_year_last() => Assert.DoesNotContain(
        CultureInfo.GetCultures(CultureTypes.AllCultures).Select(c => c.DateTimeFormat.ShortDatePattern),
        pattern => pattern.Contains('.', StringComparison.Ordinal) && pattern.IndexOf('M', StringComparison.Ordinal) < pattern.IndexOf('d', StringComparison.Ordinal) && pattern.IndexOf('d', StringComparison.Ordinal) < pattern.IndexOf('y', StringComparison.Ordinal));

    /// <summary>
    /// Worked examples: 45292 and 25569 as usually printed for 1 January 2024 and 1970; 61 is 1 March 1900 and 1462 days lie between the two
    /// counts (ECMA-376, part 1, 18.17.4.1). The library’s own count, which is that of 1900, agrees.
    /// </summary>
    [Theory]
    [InlineData("45292", DayCount.Since1900, "2024-01-01")]
    [InlineData("25569", DayCount.Since1900, "1970-01-01")]
    [InlineData("45292.73", DayCount.Since1900, "2024-01-01")]
    [InlineData("45292,73", DayCount.Since1900, "2024-01-01")]
    [InlineData("43830", DayCount.Since1904, "2024-01-01")]
    public void Counted_day_is_read(string text, DayCount count, string day)
    {
        Assert.Equal(day, SerialDay.Read(text, Today)[count].ToString("O", CultureInfo.InvariantCulture));
        Assert.Equal(day, DateOnly.FromDateTime(DateTime.FromOADate(double.Parse(text[..5], CultureInfo.InvariantCulture) + (count == DayCount.Since1904 ? 1462 : 0))).ToString("O", CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("10124")]
    [InlineData("101224")]
    [InlineData("7")]
    [InlineData("4529")]
    [InlineData("-45292")]
    [InlineData("45292.5.1")]
    public void Number_that_counts_no_day_is_not_read(string text) => Assert.Empty(SerialDay.Read(text, Today));

    [Theory]
    [InlineData("1.25", 1.25, null, "")]
    [InlineData("1,25 mm", 1.25, null, "")]
    [InlineData("Ø 1.25mm", 1.25, null, "")]
    [InlineData("0.68", 0.68, null, "")]
    [InlineData("125", 1.25, null, "")]
    [InlineData("1.25/1.30", 1.25, 1.30, "")]
    [InlineData("16L", null, null, "16L")]
    [InlineData("17l", null, null, "17L")]
    [InlineData("16 gauge", null, null, "16")]
    public void Gauge_is_read(string text, double? mains, double? crosses, string name) =>
        Assert.Equal(new GaugeText((decimal?)mains, (decimal?)crosses, name), GaugeText.Read(text));

    [Theory]
    [InlineData("")]
    [InlineData("thin")]
    [InlineData("12")]
    [InlineData("2.5")]
    [InlineData("400")]
    [InlineData("1.25/?")]
    public void What_is_no_gauge_is_not_read(string text) => Assert.Null(GaugeText.Read(text));

    [Theory]
    [InlineData("24.50", 24.5)]
    [InlineData("24,5", 24.5)]
    [InlineData("€ 24,50", 24.5)]
    [InlineData("24.50 EUR", 24.5)]
    [InlineData("1.234,50", 1234.5)]
    [InlineData("1,234.50", 1234.5)]
    [InlineData("1 234,50", 1234.5)]
    [InlineData("1’234.50", 1234.5)]
    [InlineData("20,-", 20)]
    [InlineData("0.125", 0.125)]
    public void Amount_is_read(string text, double amount) => Assert.Equal([(decimal)amount], AmountText.Read(text).Values.Distinct());

    [Fact]
    public void Amount_that_may_be_another_is_read_both_ways() =>
        Assert.Equal([(DecimalMark.Point, 1.234m), (DecimalMark.Comma, 1234m)], AmountText.Read("1.234").Select(r => (r.Key, r.Value)));

    [Theory]
    [InlineData("")]
    [InlineData("free")]
    [InlineData("1.2.3")]
    [InlineData("12,34,56")]
    [InlineData("-5")]
    public void What_is_no_amount_is_not_read(string text) => Assert.Empty(AmountText.Read(text));

    [Theory]
    [InlineData("Heron Spin 1.25", "Heron Spin", 1.25)]
    [InlineData("Heron Spin 1,25 mm", "Heron Spin", 1.25)]
    [InlineData("Heron 0.68mm yellow", "Heron yellow", 0.68)]
    [InlineData("Heron Spin", "Heron Spin", null)]
    [InlineData("?", "", null)]
    public void String_is_told_from_its_gauge(string text, string name, double? gauge) =>
        Assert.Equal(new StringText(name, (decimal?)gauge), StringText.Read(text).Mains);

    [Fact]
    public void Mains_and_crosses_stand_on_both_sides_of_a_stroke() =>
        Assert.Equal((new StringText("Heron Spin", 1.25m), new StringText("Heron Soft", 1.30m)), StringText.Read("Heron Spin 1.25 / Heron Soft 1.30"));

    public static TheoryData<string, byte[]> Encodings => new()
    {
        { "UTF-8", Encoding.UTF8.GetBytes("Zoë") },
        { "UTF-8", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("Zoë")] },
        { "UTF-16", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("Zoë")] },
        { "UTF-16", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes("Zoë")] },
        { "Windows-1252", [(byte)'Z', (byte)'o', 0xEB] },
    };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Text_is_read_in_its_encoding(string encoding, byte[] bytes) => Assert.Equal(new ListText.Reading("Zoë", encoding, null), ListText.Read(bytes));

    public static TheoryData<byte[]> NoText => new() { { [.. "PK\u0003\u0004"u8] }, { [0xD0, 0xCF, 0x11, 0xE0, 1] }, { [0, 1, 2] }, { [0xFF, 0xFE, 0x00, 0xD8] }, { Encoding.Unicode.GetBytes("a;b") } };

    [Theory]
    [MemberData(nameof(NoText))]
    public void What_is_no_text_is_refused(byte[] bytes) => Assert.NotNull(ListText.Read(bytes).Wrong);

    [Theory]
    [InlineData("a,b\n1,2")]
    [InlineData("a;b\r\n1;2")]
    [InlineData("a\tb\n1\t2")]
    [InlineData("\"a\";\"b\"\n\"1\";\"2\"")]
    public void Separator_is_found(string text)
    {
        var table = ListTable.Of(text);

        Assert.Equal(["a", "b"], table.Headings);
        Assert.Equal(["1", "2"], Assert.Single(table.Rows).Cells);
    }

    [Fact]
    public void List_without_headings_loses_no_line()
    {
        var table = ListTable.Of("Tamsin Quill;2025-01-13;52\nTamsin Quill;2025-02-13;52");

        Assert.Equal((false, 2, "Column 1"), (table.HasHeadings, table.Rows.Count, table.Headings[0]));
    }

    [Theory]
    [InlineData("Client;Racket;Date;String;Tension")]
    [InlineData("Cliente;Raqueta;Fecha;Cuerda;Tensión")]
    [InlineData("Client;Raquette;Date;Cordage;Tension")]
    [InlineData("Kunde;Schläger;Datum;Saite;Spannung (kg)")]
    [InlineData("Cliente;Racchetta;Data;Corda;Tensione")]
    [InlineData("Cliente;Raquete;Data;Corda;Tensão")]
    [InlineData("お客様;ラケット;日付;ストリング;テンション")]
    [InlineData("客户;球拍;日期;球线;磅数")]
    public void Headings_are_guessed_in_eight_languages(string headings) =>
        Assert.Equal([ListColumn.Client, ListColumn.Frame, ListColumn.Day, ListColumn.Strings, ListColumn.Tension], HeadingWords.Guess(headings.Split(';')));

    [Fact]
    public void Heading_that_nobody_knows_goes_into_the_note_and_no_guess_is_given_twice() =>
        Assert.Equal([ListColumn.Client, ListColumn.Note, ListColumn.Note], HeadingWords.Guess(["Name", "Loyalty", "Customer"]));

    [Theory]
    [InlineData("12 23", "2")]
    [InlineData("12", "1 2")]
    [InlineData("1 2", "1 2")]
    public void Evidence_decides_what_the_cells_leave_open(string cells, string left) =>
        Assert.Equal(left, string.Join(' ', Evidence.Left(cells.Split(' ').Select(cell => (IEnumerable<char>)cell), "123")));
}
