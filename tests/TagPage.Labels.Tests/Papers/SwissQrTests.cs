using TagPage.Labels.Papers;
using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Papers;

/// <summary>
/// Decoded from the picture, cross and all, and held against the table of data elements of “Swiss Implementation Guidelines QR-bill”,
/// version 2.3, SIX, sections 4.2 and 6 (from memory: the document could not be read here). The account is that of its examples.
/// </summary>
public sealed class SwissQrTests
{
    private const string Account = "CH9300762011623852957";

    private static readonly SwissPayee Payee = SwissPayee.Of(Account, "Ferrygate Racket Bench", "Seestrasse 12a", "8004 Zürich", "CH")!;

    private static (string[] Lines, string Level) Scanned(TransferQr square)
    {
        var dots = PngReader.Read(square.Png(6));
        var (text, level) = Scanner.Scan(dots);
        Assert.Equal(square.Payload, text);
        return (text.Split('\n').Select(line => line.TrimEnd('\r')).ToArray(), level);
    }

    [Fact]
    public void Square_says_field_by_field_what_the_guidelines_list()
    {
        var (lines, level) = Scanned(TransferQr.OfSwiss(Payee, "CHF", 15451, "Bill 2026-0007", ""));

        Assert.Equal("M", level);
        Assert.InRange(lines.Length, 31, 34);
        Assert.Equal(["SPC", "0200", "1"], lines[..3]); // header: type, version, UTF-8
        Assert.Equal(Account, lines[3]); // account of the creditor
        Assert.Equal(["S", "Ferrygate Racket Bench", "Seestrasse", "12a", "8004", "Zürich", "CH"], lines[4..11]); // creditor, structured address
        Assert.All(lines[11..18], line => Assert.Equal("", line)); // ultimate creditor: for future use
        Assert.Equal(["154.51", "CHF"], lines[18..20]); // amount with two decimals, currency
        Assert.All(lines[20..27], line => Assert.Equal("", line)); // ultimate debtor
        Assert.Equal(["NON", ""], lines[27..29]); // without a reference
        Assert.Equal(["Bill 2026-0007", "EPD"], lines[29..31]); // message, end of the payment data
        Assert.All(lines[31..], line => Assert.Equal("", line)); // bill information, other procedures
    }

    /// <summary>Account and reference of the guidelines’ examples, whose bank number 31999 is one of a QR-IBAN.</summary>
    [Fact]
    public void QR_IBAN_goes_with_a_QR_reference()
    {
        var payee = SwissPayee.Of("CH4431999123000889012", "Ferrygate Racket Bench", "Seestrasse 12a", "8004 Zürich", "CH")!;

        var (lines, _) = Scanned(TransferQr.OfSwiss(payee, "CHF", 15451, "Bill 2026-0007", "210000000003139471430009017"));

        Assert.Equal("CH4431999123000889012", lines[3]);
        Assert.Equal(["QRR", "210000000003139471430009017", "Bill 2026-0007", "EPD"], lines[27..31]);
    }

    [Theory]
    [InlineData(1, "0.01")]
    [InlineData(100, "1.00")]
    [InlineData(99_999_999_999, "999999999.99")]
    public void Amount_has_two_decimals_in_both_currencies(long cents, string amount)
    {
        foreach (var currency in new[] { "CHF", "EUR" })
            Assert.Equal([amount, currency], Scanned(TransferQr.OfSwiss(Payee, currency, cents, "x", "")).Lines[18..20]);
    }

    [Theory]
    [InlineData("Seestrasse 12a", "8004 Zürich", "Seestrasse|12a|8004|Zürich")]
    [InlineData("Im Winkel", "CH-3011 Bern", "Im Winkel||3011|Bern")]
    [InlineData("Rue de l’Hôpital 3", "1700 Fribourg", "Rue de l'Hôpital|3|1700|Fribourg")]
    [InlineData("", "9490 Vaduz", "||9490|Vaduz")]
    public void Address_is_taken_apart(string street, string town, string parts)
    {
        var payee = SwissPayee.Of(Account, "Bench", street, town, "CH")!;
        var lines = Scanned(TransferQr.OfSwiss(payee, "CHF", 100, "x", "")).Lines;

        Assert.Equal(parts, string.Join('|', lines[6..10]));
    }

    [Theory]
    [InlineData("DE89370400440532013000", "8004 Zürich")]
    [InlineData(Account, "Zürich")]
    [InlineData(Account, "")]
    public void Without_a_usual_Swiss_account_and_a_whole_address_there_is_none(string iban, string town) =>
        Assert.Null(SwissPayee.Of(iban, "Bench", "Seestrasse 12", town, "CH"));

    [Fact]
    public void Without_a_country_there_is_none() => Assert.Null(SwissPayee.Of(Account, "Bench", "Seestrasse 12", "8004 Zürich", ""));

    [Fact]
    public void Any_letters_and_lengths_stay_within_what_a_bank_reads()
    {
        var payee = SwissPayee.Of(Account, string.Concat(Enumerable.Repeat("Łódź 鷺 Übersee\n", 9)), string.Concat(Enumerable.Repeat("Straße ", 20)), "8004 " + new string('é', 60), "CH")!;

        var square = TransferQr.OfSwiss(payee, "CHF", 99_999_999_999, string.Concat(Enumerable.Repeat("Schläger 😀 neu ", 20)), "");

        var lines = Scanned(square).Lines;
        Assert.StartsWith(".ódz . Übersee .ódz", lines[5], StringComparison.Ordinal);
        Assert.True(lines[5].Length <= 70 && lines[6].Length <= 70 && lines[9].Length <= 35 && lines[29].Length <= 140);
        Assert.True(square.Payload.Length <= 997 && square.Version <= 25);
    }

    /// <summary>7 mm of 46 (the same guidelines, section 6.4.2; from memory): the middle is white, left of it black.</summary>
    [Fact]
    public void Swiss_cross_is_in_the_middle_of_picture_and_drawing()
    {
        var square = TransferQr.OfSwiss(Payee, "CHF", 100, "x", "");
        var picture = PngReader.Read(square.Png(10));
        var (middle, unit) = (picture.Width / 2, square.Modules * 10 * 7 / 46.0 / 19.8);

        Assert.True(IsWhite(0, 0) && IsWhite(5, 0) && IsWhite(0, -5), "the arms");
        Assert.True(!IsWhite(4, 4) && !IsWhite(-4, 4) && !IsWhite(8, 0), "the ground");
        Assert.True(IsWhite(9.6, 0) && IsWhite(9.6, 9.6), "the edge");
        Assert.Equal(4, square.Svg().Split("<rect").Length - 2);
        Assert.DoesNotContain("NaN", square.Svg(), StringComparison.Ordinal);

        bool IsWhite(double right, double down) => picture.Gray[(int)(middle + down * unit) * picture.Width + (int)(middle + right * unit)] > 128;
    }

    [Fact]
    public void On_paper_it_is_46_millimetres_and_scans()
    {
        var sheet = new Sheet { Title = "Bill", Square = TransferQr.OfSwiss(Payee, "CHF", 15451, "Bill 2026-0007", "") };

        var page = Rasters.OfPdf(SheetPdf.Of(sheet), 150).Single();

        Assert.Equal(sheet.Square.Payload, Scanner.Look(page));
        var dark = Enumerable.Range(0, page.Width).Where(x => Enumerable.Range(200, page.Height - 400).Count(y => page.Gray[y * page.Width + x] < 128) > 8).ToList();
        Assert.InRange((dark[^1] - dark[0] + 1) * 25.4 / 150, 45.3, 46.7);
    }
}
