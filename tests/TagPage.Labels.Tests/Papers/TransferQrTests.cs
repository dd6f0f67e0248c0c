using System.Text;
using TagPage.Labels.Papers;

namespace TagPage.Labels.Tests.Papers;

/// <summary>
/// Decoded from the picture and held against EPC069-12, “Quick Response Code: Guidelines to Enable Data Capture for the
/// Initiation of a SEPA Credit Transfer”, version 2.1, European Payments Council 2012: table of data elements, section 2.
/// </summary>
public sealed class TransferQrTests
{
    private const string Account = "DE89370400440532013000";

    private static (string[] Lines, string Level) Scanned(TransferQr square)
    {
        var side = square.Modules + 8;
        var (text, level) = Scanner.Scan(Bitmap.Of(side, 4, (x, y) => square.IsDark(x - 4, y - 4)));
        Assert.Equal(square.Payload, text);
        return (text.Split('\n').Select(line => line.TrimEnd('\r')).ToArray(), level);
    }

    [Fact]
    public void Square_says_field_by_field_what_the_guideline_lists()
    {
        var (lines, level) = Scanned(TransferQr.Of(Account, "Ferrygate Racket Bench", 15451, "Bill 2026-0007"));

        Assert.Equal("M", level);
        Assert.InRange(lines.Length, 11, 12);
        Assert.Equal("BCD", lines[0]); // service tag
        Assert.Equal("002", lines[1]); // version: the BIC may be left out
        Assert.Equal("1", lines[2]); // character set: UTF-8
        Assert.Equal("SCT", lines[3]); // identification: SEPA credit transfer
        Assert.Equal("", lines[4]); // BIC of the beneficiary's bank
        Assert.Equal("Ferrygate Racket Bench", lines[5]); // name, at most 70 characters
        Assert.Equal(Account, lines[6]); // IBAN
        Assert.Equal("EUR154.51", lines[7]); // amount, a point before the cents
        Assert.Equal("", lines[8]); // purpose, at most 4 characters
        Assert.Equal("", lines[9]); // structured remittance; not together with the next
        Assert.Equal("Bill 2026-0007", lines[10]); // unstructured remittance, at most 140 characters
        Assert.All(lines.Skip(11), line => Assert.Equal("", line)); // information for the originator
    }

    [Theory]
    [InlineData(1, "EUR0.01")]
    [InlineData(100, "EUR1")]
    [InlineData(1250, "EUR12.5")]
    [InlineData(99_999_999_999, "EUR999999999.99")]
    public void Amount_is_in_euros_with_a_point(long cents, string amount)
    {
        var read = Scanned(TransferQr.Of(Account, "Bench", cents, "x")).Lines[7];
        Assert.Equal("EUR", read[..3]);
        Assert.Equal(decimal.Parse(amount[3..], System.Globalization.CultureInfo.InvariantCulture), decimal.Parse(read[3..], System.Globalization.CultureInfo.InvariantCulture));
        Assert.Matches(@"^EUR\d{1,9}(\.\d{1,2})?$", read);
    }

    /// <summary>At most 331 bytes, and no symbol above version 13.</summary>
    [Fact]
    public void Longest_names_in_any_letters_stay_within_what_a_bank_reads()
    {
        var square = TransferQr.Of(Account, string.Concat(Enumerable.Repeat("Saitenwerkstatt Übersee ", 9)), 99_999_999_999, string.Concat(Enumerable.Repeat("Schläger neu bespannt ", 20)));
        var (lines, _) = Scanned(square);

        Assert.True(lines[5].Length <= 70 && lines[10].Length <= 140);
        Assert.True(Encoding.UTF8.GetByteCount(square.Payload) <= 331, $"{Encoding.UTF8.GetByteCount(square.Payload)} bytes");
        Assert.True(square.Version <= 13);
    }

    [Fact]
    public void Line_break_in_a_name_makes_no_field_of_its_own()
    {
        var (lines, _) = Scanned(TransferQr.Of(Account, "Bench\nDE00", 100, "Bill\r\nEUR9999"));

        Assert.Equal(("Bench DE00", Account, "Bill EUR9999"), (lines[5], lines[6], lines[10]));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(100_000_000_000)]
    public void Amount_that_nobody_can_transfer_has_no_square(long cents) => Assert.Throws<ArgumentOutOfRangeException>(() => TransferQr.Of(Account, "Bench", cents, "x"));

    [Fact]
    public void Page_and_paper_draw_the_same_square()
    {
        var svg = TransferQr.Of(Account, "Bench", 100, "x").Svg("to pay");
        Assert.StartsWith("<svg", svg, StringComparison.Ordinal);
        Assert.Contains("aria-label=\"to pay\"", svg, StringComparison.Ordinal);
    }
}
