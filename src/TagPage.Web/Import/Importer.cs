using TagPage.Records.Import;
using TagPage.Records.Shop;

namespace TagPage.Web.Import;

/// <summary>Brings a shop's records in from CSV files: checks them, and saves them only when nothing at all is wrong.</summary>
public sealed class Importer(ImportStore store, ShopStore shops, ShopClock clock)
{
    /// <summary>Says what an import would do; saves nothing.</summary>
    public ImportReport Check(ImportFiles files)
    {
        var reading = Read(files);
        return reading.Problems.Count > 0 ? ImportReport.Of(reading, []) : ImportReport.Of(reading, store.Clashes(reading.Batch));
    }

    /// <summary>
    /// Saves all records of the files in one transaction, or none where the report has problems.
    /// The same form key imports once.
    /// </summary>
    public ImportReport Import(ImportFiles files, string formKey)
    {
        var reading = Read(files);
        return reading.Problems.Count > 0 ? ImportReport.Of(reading, []) : ImportReport.Of(reading, store.Add(reading.Batch, formKey));
    }

    private ImportReading Read(ImportFiles files)
    {
        var shop = shops.Get();
        return ImportReader.Read(files, shop.Version > 0 ? shop : null, clock.Today);
    }
}
