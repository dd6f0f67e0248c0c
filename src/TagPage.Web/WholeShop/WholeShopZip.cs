using System.Globalization;
using System.IO.Compression;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using TagPage.Records.Privacy;
using TagPage.Records.WholeShop;
using TagPage.Web.Csv;

namespace TagPage.Web.WholeShop;

/// <summary>A whole shop as a zip of CSV files, written and read. The same records give the same bytes: no time stands in it.</summary>
public static class WholeShopZip
{
    /// <summary>Unpacked: far more than a shop of 100,000 rackets, and no more than memory bears.</summary>
    public const long MostBytes = 1_000_000_000;

    private const string NoZip = "This is not the zip file that “Download everything” makes.";

    /// <summary>The earliest that a zip can say.</summary>
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] Of(IReadOnlyList<ExportStore.Sheet> sheets)
    {
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
            foreach (var sheet in sheets)
                Add(archive, sheet);
        return zip.ToArray();
    }

    private static void Add(ZipArchive archive, ExportStore.Sheet sheet)
    {
        var entry = archive.CreateEntry(sheet.Name + ".csv");
        entry.LastWriteTime = NoTime;
        using var writer = new StreamWriter(entry.Open(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        writer.Write(SheetText.Write(sheet.Columns, sheet.Rows));
    }

    /// <summary>All files of the zip, or why it cannot be read.</summary>
    public static (IReadOnlyList<WholeShopStore.Part> Parts, string? Wrong) Read(Stream stream)
    {
        try
        {
            using var archive = new ZipArchive(stream, ZipArchiveMode.Read);
            if (archive.Entries.Count == 0 || archive.Entries.Any(entry => !IsKnown(entry.FullName)))
                return ([], NoZip);
            if (archive.Entries.Sum(entry => entry.Length) > MostBytes)
                return ([], $"The files have more than {MostBytes / 1_000_000} MB.");
            return ([.. archive.Entries.Select(Part)], null);
        }
        // A stream that is too short, or ends before the zip says, is told in several ways.
        catch (Exception e) when (e is InvalidDataException or IOException or ArgumentOutOfRangeException or DecoderFallbackException or CsvHelperException or NotSupportedException)
        {
            return ([], NoZip);
        }
    }

    private static bool IsKnown(string name) => WholeShopPlan.Given.Any(table => name == table.Name + ".csv");

    /// <summary>Read no further than the zip says it is long.</summary>
    private static WholeShopStore.Part Part(ZipArchiveEntry entry)
    {
        var bytes = new byte[entry.Length];
        using (var file = entry.Open())
            file.ReadExactly(bytes);
        var body = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? bytes.AsSpan(Encoding.UTF8.Preamble.Length) : bytes;
        using var parser = new CsvParser(new StringReader(new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(body)), new CsvConfiguration(CultureInfo.InvariantCulture) { IgnoreBlankLines = false });
        var header = parser.Read() ? parser.Record! : [];
        var rows = new List<(int, string[])>();
        for (var line = parser.RawRow + 1; parser.Read(); line = parser.RawRow + 1)
            rows.Add((line, Array.ConvertAll(parser.Record!, FormulaGuard.Strip)));
        return new WholeShopStore.Part(entry.FullName[..^".csv".Length], header, rows);
    }
}
