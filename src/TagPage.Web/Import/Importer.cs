using TagPage.Records.Backups;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Web.Import;

/// <summary>Brings a shop's records in from CSV files: checks them, and saves them only when nothing is wrong or undecided.</summary>
public sealed class Importer(ImportStore store, ShopStore shops, BackupStore backups, ShopClock clock)
{
    /// <summary>Says what an import would do; saves nothing.</summary>
    public ImportReport Check(ImportFiles files, ImportChoices choices) => Report(files, choices, batch => store.Look(batch, choices));

    /// <summary>
    /// Saves all records of the files in one transaction, or none where the report is not clean. The same form key imports
    /// once.
    /// </summary>
    public ImportReport Import(ImportFiles files, ImportChoices choices, string formKey) =>
        Report(files, choices, batch => store.Add(batch, choices, formKey));

    /// <summary>Checks, makes a backup and imports. Without a backup nothing is saved, and the fault says why there is none.</summary>
    public (ImportReport Report, BackupFault? Fault) BackUpAndImport(ImportFiles files, ImportChoices choices, string formKey)
    {
        var report = Check(files, choices);
        if (!report.IsClean)
            return (report, null);
        return backups.Make(BackupFile.BeforeImport) is { } fault ? (report, fault) : (Import(files, choices, formKey), null);
    }

    private ImportReport Report(ImportFiles files, ImportChoices choices, Func<ImportBatch, ImportFinding> act)
    {
        var shop = shops.Get();
        var reading = ImportReader.Read(files, shop.Version > 0 ? shop : null, clock.Today, choices.SettledBefore);
        return ImportReport.Of(reading, reading.Problems.Count > 0 ? ImportFinding.None : act(reading.Batch));
    }
}
