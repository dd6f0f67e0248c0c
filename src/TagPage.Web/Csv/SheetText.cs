using System.Globalization;
using System.Text;

namespace TagPage.Web.Csv;

/// <summary>The bytes of a sent file as text, and rows as the text of a file.</summary>
internal static class SheetText
{
    public const int MostBytes = 20_000_000;

    /// <summary>What to do about a file that is no CSV of UTF-8.</summary>
    public const string SaveAgain = "In the spreadsheet program choose “Save as” and the format “CSV UTF-8”, then send that file.";

    public static readonly string TooLarge = $"The file has more than {MostBytes / 1_000_000} MB. Split it and send the parts one after the other.";

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text without its byte order mark; null, with the reason among the problems, where it is not UTF-8.</summary>
    public static string? Decode(string file, ReadOnlySpan<byte> bytes, Problems problems)
    {
        if (bytes.Length > MostBytes)
            problems.Add(file, TooLarge);
        else if (bytes.StartsWith<byte>([0xFF, 0xFE]) || bytes.StartsWith<byte>([0xFE, 0xFF]))
            problems.Add(file, "The file is UTF-16. " + SaveAgain);
        else if (bytes.StartsWith("PK"u8))
            problems.Add(file, "This is not a CSV file but a workbook or an archive. " + SaveAgain);
        else
            return DecodeUtf8(file, bytes, problems);
        return null;
    }

    /// <summary>Rows under their header, cells that a spreadsheet program would run guarded.</summary>
    public static string Write(IEnumerable<string> columns, IEnumerable<IReadOnlyList<object?>> rows) =>
        string.Concat(new[] { string.Join(',', columns) }.Concat(rows.Select(row => string.Join(',', row.Select(Cell)))).Select(line => line + "\r\n"));

    private static string Cell(object? value) => Quoted(Convert.ToString(value, CultureInfo.InvariantCulture) ?? "");

    /// <summary>As a cell of a file stands in it.</summary>
    public static string Quoted(string cell)
    {
        var text = FormulaGuard.Guard(cell);
        return text.AsSpan().IndexOfAny(",\"\r\n;") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    private static string? DecodeUtf8(string file, ReadOnlySpan<byte> bytes, Problems problems)
    {
        var body = bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[Encoding.UTF8.Preamble.Length..] : bytes;
        try
        {
            return Strict.GetString(body);
        }
        catch (DecoderFallbackException e)
        {
            var before = body[..Math.Clamp(e.Index, 0, body.Length)];
            problems.Add(file, "From this line on the file is not UTF-8. " + SaveAgain, 1 + before.Count((byte)'\n'));
            return null;
        }
    }
}
