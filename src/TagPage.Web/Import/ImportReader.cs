using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>Reads a set of files into a batch and finds everything that is wrong with them. Knows no database.</summary>
public sealed class ImportReader
{
    private readonly ImportFiles _files;
    private readonly Problems _problems = new();
    private readonly Problems _notices = new();
    private readonly ImportBatch _batch = new();

    private ImportReader(ImportFiles files) => _files = files;

    /// <param name="files">What was sent.</param>
    /// <param name="shop">The shop as it is; null where there is none yet.</param>
    /// <param name="today">Today in the shop's time zone.</param>
    /// <param name="settledBefore">Jobs strung before this day count as collected and paid; null for none.</param>
    public static ImportReading Read(ImportFiles files, ShopDetails? shop, DateOnly today, DateOnly? settledBefore = null)
    {
        var reader = new ImportReader(files);
        reader.ReadAll(shop, today, settledBefore);
        return new ImportReading(reader._batch, reader._problems, reader._notices);
    }

    private void ReadAll(ShopDetails? shop, DateOnly today, DateOnly? settledBefore)
    {
        var details = shop ?? ReadShop();
        if (shop is not null)
            RefuseShopFiles();
        var context = new ImportContext(details, _batch.AsOf ?? today, _batch, _problems, _notices) { SettledBefore = settledBefore };
        _batch.Clients.IsReadable = ReadSheet(ClientSheet.Sheet, ClientSheet.Read, context);
        _batch.Players.IsReadable = ReadSheet(PlayerSheet.Sheet, PlayerSheet.Read, context);
        _batch.Strings.IsReadable = ReadSheet(StringSheet.Sheet, StringSheet.Read, context);
        ReadSheet(FrameSheet.Sheet, FrameSheet.Read, context);
        _batch.Rackets.IsReadable = ReadSheet(RacketSheet.Sheet, RacketSheet.Read, context);
        ReadSheet(SpecSheet.Sheet, SpecSheet.Read, context);
        ReadSheet(PlaceSheet.Sheet, PlaceSheet.Read, context);
        ReadSheet(PieceSheet.Sheet, PieceSheet.Read, context);
        ReadSheet(JobSheet.Sheet, JobSheet.Read, context);
        foreach (var name in _files.Second)
            _problems.Add(name, $"This is a second {ImportSheets.Known(name)}. Remove one of the two.");
        if (_files.ByName.Count == 0)
            _problems.Add("", $"No file to import was found. Known file names are {string.Join(", ", ImportSheets.All.Select(s => s.File))}.");
    }

    private ShopDetails ReadShop()
    {
        if (!_files.ByName.TryGetValue(ShopSheet.File, out var bytes))
        {
            _problems.Add(ShopSheet.File, "The shop is not set up yet. Set it up first, or add this file.");
            return new ShopDetails();
        }
        var shop = ShopSheet.Read(bytes, _batch, _problems);
        _batch.Shop = shop with { HomeMarkdown = ReadHome() };
        return shop;
    }

    private string ReadHome()
    {
        if (!_files.ByName.TryGetValue(ImportSheets.HomeFile, out var bytes))
            return "";
        var text = SheetText.Decode(ImportSheets.HomeFile, bytes, _problems)?.ReplaceLineEndings("\n") ?? "";
        if (text.Length > ImportLimits.HomeLetters || text.Contains('\0', StringComparison.Ordinal))
            _problems.Add(ImportSheets.HomeFile, $"Keep the page within {ImportLimits.HomeLetters} characters of plain text.");
        return text;
    }

    private void RefuseShopFiles()
    {
        foreach (var name in new[] { ShopSheet.File, ImportSheets.HomeFile }.Where(_files.ByName.ContainsKey))
            _problems.Add(name, "This shop is already set up. Leave this file out and change the shop under Settings.");
    }

    /// <summary>True where the file was there and at least its header made sense.</summary>
    private bool ReadSheet(Sheet sheet, Action<SheetRow, ImportContext> read, ImportContext context)
    {
        if (!_files.ByName.TryGetValue(sheet.File, out var bytes))
            return false;
        foreach (var missing in ImportSheets.Needs.GetValueOrDefault(sheet.File, []).Where(n => !_files.ByName.ContainsKey(n)))
            _problems.Add(sheet.File, $"This file refers to {missing}. Send that one too.");
        var before = _problems.Count;
        var rows = 0;
        foreach (var row in SheetReader.Read(sheet, bytes, _problems))
        {
            read(row, context);
            rows++;
        }
        return rows > 0 || _problems.Count == before;
    }
}

/// <param name="Batch">What was read; to be saved only where there are no problems.</param>
/// <param name="Problems">What stops the import.</param>
/// <param name="Notices">What is worth a second look.</param>
public sealed record ImportReading(ImportBatch Batch, Problems Problems, Problems Notices);
