using TagPage.Records.Backups;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Stock;
using TagPage.Records.Storage;

namespace TagPage.Records.Troubles;

/// <summary>All that the owner has to see to, the worst first.</summary>
public sealed class TroubleStore(DatabaseCheck check, GivenUpStore mails, StockStore stock, DataFolder folder, ShopClock clock)
{
    /// <param name="backups">How they stand.</param>
    public IReadOnlyList<Trouble> All(BackupState backups) => [.. Found(backups).OrderByDescending(t => t.IsGrave)];

    private IEnumerable<Trouble> Found(BackupState backups)
    {
        if (!check.IsSound)
            yield return new DatabaseDamaged();
        foreach (var trouble in OfBackups(backups))
            yield return trouble;
        if (DiskRoom.Of(folder) is { } filling)
            yield return filling;
        if (mails.Count() is { All: > 0 } given)
            yield return new MailGivenUp(given.All, given.FromFinders);
        if (stock.Low() is > 0 and var low)
            yield return new StringsLow(low);
    }

    private IEnumerable<Trouble> OfBackups(BackupState state)
    {
        if (state.Fault is { } fault)
            yield return new BackupFailed(fault, state.LastGood);
        else if (state.LastGood is { } last && clock.Now - last > BackupTime.Old)
            yield return new BackupOld(last);
        if (state.Second is { Fault: { } second, Folder: var where })
            yield return new SecondBackupFailed(second, where);
    }
}
