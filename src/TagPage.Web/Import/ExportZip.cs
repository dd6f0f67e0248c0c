using System.IO.Compression;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using TagPage.Records.Privacy;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>The export as a zip: a CSV for each table, all of them once more in one JSON file, and pictures.</summary>
public static class ExportZip
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <param name="zip">Is written to.</param>
    /// <param name="read">Reads the records, and gives each picture as it goes.</param>
    public static void Write(Stream zip, Func<Action<string, byte[]>, IReadOnlyList<ExportStore.Sheet>> read)
    {
        using var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true);
        var sheets = read((name, bytes) => Add(archive, name, bytes));
        foreach (var sheet in sheets)
            Add(archive, sheet.Name + ".csv", SheetText.Write(sheet.Columns, sheet.Rows));
        Add(archive, "everything.json", JsonSerializer.Serialize(sheets.ToDictionary(s => s.Name, Rows), Readable));
    }

    private static void Add(ZipArchive archive, string name, byte[] picture)
    {
        using var file = archive.CreateEntry(name, CompressionLevel.NoCompression).Open();
        file.Write(picture);
    }

    /// <summary>Files as they are.</summary>
    public static byte[] Of(IEnumerable<(string Name, string Text)> files)
    {
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in files)
                Add(archive, name, text);
        }
        return zip.ToArray();
    }

    private static IEnumerable<Dictionary<string, object?>> Rows(ExportStore.Sheet sheet) =>
        sheet.Rows.Select(row => sheet.Columns.Zip(row).ToDictionary(cell => cell.First, cell => cell.Second));

    /// <summary>With the mark that spreadsheets need to read UTF-8.</summary>
    private static void Add(ZipArchive archive, string name, string text)
    {
        using var writer = new StreamWriter(archive.CreateEntry(name).Open(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: name.EndsWith(".csv", StringComparison.Ordinal)));
        writer.Write(text);
    }
}
