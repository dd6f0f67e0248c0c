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

    /// <summary>Bytes; no picture on file has more.</summary>
    private const long MostOfPicture = 1_000_000;

    private const string Csv = ".csv";

    private const string NoZip = "This is not the zip file that “Download everything” makes.";

    /// <summary>The earliest that a zip can say.</summary>
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Pictures as they come from the records, and then the sheets; false where nobody may have them.</summary>
    public static bool Write(Stream zip, Func<Action<string, byte[]>, IReadOnlyList<ExportStore.Sheet>?> read)
    {
        using var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true);
        if (read((name, bytes) => Add(archive, name, bytes)) is not { } sheets)
            return false;
        foreach (var sheet in sheets)
            Add(archive, sheet);
        return true;
    }

    private static void Add(ZipArchive archive, string name, byte[] picture)
    {
        var entry = archive.CreateEntry(name, CompressionLevel.NoCompression);
        entry.LastWriteTime = NoTime;
        using var file = entry.Open();
        file.Write(picture);
    }

    private static void Add(ZipArchive archive, ExportStore.Sheet sheet)
    {
        var entry = archive.CreateEntry(sheet.Name + Csv);
        entry.LastWriteTime = NoTime;
        using var writer = new StreamWriter(entry.Open(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        writer.Write(SheetText.Write(sheet.Columns, sheet.Rows));
    }

    /// <summary>All sheets of the zip, or why it cannot be read. Pictures are read from the stream when they are asked for.</summary>
    public static (IReadOnlyList<WholeShopStore.Part> Parts, string? Wrong) Read(Stream stream)
    {
        try
        {
            // Holds nothing but the stream, which is the caller's.
            var archive = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
            if (archive.Entries.Count == 0 || archive.Entries.Any(entry => !IsKnown(entry.FullName)))
                return ([], NoZip);
            var sheets = archive.Entries.Where(entry => entry.FullName.EndsWith(Csv, StringComparison.Ordinal)).ToList();
            if (sheets.Sum(entry => entry.Length) > MostBytes)
                return ([], $"The files have more than {MostBytes / 1_000_000} MB.");
            return ([.. sheets.Select(entry => Part(entry) with { File = name => Picture(archive, name) })], null);
        }
        // A stream that is too short, or ends before the zip says, is told in several ways.
        catch (Exception e) when (e is InvalidDataException or IOException or ArgumentOutOfRangeException or DecoderFallbackException or CsvHelperException or NotSupportedException)
        {
            return ([], NoZip);
        }
    }

    private static bool IsKnown(string name) => WholeShopPlan.Given.Any(table =>
        name == table.Name + Csv || (table.Files.Length > 0 && name.StartsWith(table.Name + "/", StringComparison.Ordinal) && table.Files.Any(column => name.EndsWith($"-{column}.jpg", StringComparison.Ordinal))));

    /// <summary>Null for one that is missing, damaged, or larger than the records take.</summary>
    private static byte[]? Picture(ZipArchive archive, string name)
    {
        if (archive.GetEntry(name) is not { Length: <= MostOfPicture } entry || name.EndsWith(Csv, StringComparison.Ordinal))
            return null;
        try
        {
            return Bytes(entry);
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            return null;
        }
    }

    /// <summary>Read no further than the zip says it is long.</summary>
    private static byte[] Bytes(ZipArchiveEntry entry)
    {
        var bytes = new byte[entry.Length];
        using var file = entry.Open();
        file.ReadExactly(bytes);
        return bytes;
    }

    private static WholeShopStore.Part Part(ZipArchiveEntry entry)
    {
        var bytes = Bytes(entry);
        var body = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? bytes.AsSpan(Encoding.UTF8.Preamble.Length) : bytes;
        using var parser = new CsvParser(new StringReader(new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(body)), new CsvConfiguration(CultureInfo.InvariantCulture) { IgnoreBlankLines = false });
        var header = parser.Read() ? parser.Record! : [];
        var rows = new List<(int, string[])>();
        for (var line = parser.RawRow + 1; parser.Read(); line = parser.RawRow + 1)
            rows.Add((line, Array.ConvertAll(parser.Record!, FormulaGuard.Strip)));
        return new WholeShopStore.Part(entry.FullName[..^Csv.Length], header, rows);
    }
}
