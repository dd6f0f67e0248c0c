using TagPage.Records.Accounts;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>Makes backups, brings those made for the long run to the second folder, keeps as many as were asked for, and knows how they stand.</summary>
public sealed class BackupStore(Database database, DataFolder data, BackupSettingStore settings, BackupSeal seal, DatabaseCheck check, ShopClock clock, TimeProvider time, ILogger<BackupStore> log)
{
    private readonly Lock _one = new();

    /// <summary>What the last tries came to; see <see cref="BackupState"/>.</summary>
    private volatile Tries _tries = new(null, null, null);

    private sealed record Tries(BackupFault? First, BackupFault? Second, DateTimeOffset? SecondGood);

    private BackupFolder Own => new(data.BackupsPath);

    /// <summary>Newest first, of the data folder.</summary>
    public IReadOnlyList<BackupFile> List() => Own.List();

    public BackupState State()
    {
        var folder = settings.Get().Folder;
        var second = folder.Length == 0 ? null : new SecondState(folder, _tries.SecondGood, _tries.Second);
        return new BackupState(Own.Newest(clock.Now)?.MadeAt, _tries.First, second);
    }

    /// <returns>Why it failed; null for one that was made and checked.</returns>
    public BackupFault? Make(string why) => Make(why, out _);

    /// <param name="why">One of the reasons of <see cref="BackupFile"/>.</param>
    /// <param name="made">Null where it failed.</param>
    /// <returns>Why it failed; null for one that was made and checked.</returns>
    public BackupFault? Make(string why, out BackupFile? made)
    {
        lock (_one)
        {
            made = MakeOwn(why);
            if (made is { IsRegular: true })
                BringToSecond();
            return _tries.First;
        }
    }

    /// <summary>
    /// Makes the nightly one where it is due, tries again what failed, and brings the newest to the second folder where that lacks it, as when its drive
    /// is plugged in again. A shop with nobody who signs in has nothing to lose yet.
    /// </summary>
    public void Tend()
    {
        lock (_one)
        {
            if (_tries.First is not null || IsDue())
            {
                MakeOwn(BackupFile.Nightly);
                Forget(Own);
            }
            RestoringPlace.Sweep(data, clock.Now);
            BringToSecond();
        }
    }

    private bool IsDue() => database.Read(AccountStore.Any) && BackupTime.IsDue(
        Own.Newest(clock.Now) is { } newest ? clock.OnTheWall(newest.MadeAt).DateTime : null, clock.OnTheWall(clock.Now).DateTime);

    private BackupFile? MakeOwn(string why)
    {
        BackupFile? made = null;
        var fault = Try("A backup could not be made.", () =>
        {
            made = new BackupMaker(database, data, time).Make(why);
            Own.Tidy(settings.Get().Plan, clock.Now);
        });
        _tries = _tries with { First = fault };
        // Either the records are damaged, or only what was written of them.
        if (fault == BackupFault.Damaged)
            check.LookClosely();
        Try("Who was forgotten could not be noted beside the backups.", () => KeepMarks(Own));
        return fault is null ? made : null;
    }

    private void BringToSecond()
    {
        var setting = settings.Get();
        if (setting.Folder.Length == 0 || Own.Newest(clock.Now) is not { } newest)
        {
            _tries = _tries with { Second = null, SecondGood = null };
            return;
        }
        var (second, isFresh) = (new BackupFolder(setting.Folder), false);
        var fault = Try("A backup could not be brought to the second folder.", () =>
        {
            isFresh = SecondFolder.Bring(newest, second, seal);
            KeepMarks(second);
            second.Tidy(setting.Plan, clock.Now);
        });
        _tries = _tries with { Second = fault, SecondGood = fault is null ? newest.MadeAt : _tries.SecondGood };
        if (isFresh)
            Forget(second);
    }

    private void KeepMarks(BackupFolder folder) => MarkFile.Add(folder.Path, database.Read(ForgottenMarks.All));

    /// <summary>Whoever was deleted since is deleted from older backups too; one that is damaged keeps no other from it. Sealed ones cannot be opened.</summary>
    private void Forget(BackupFolder folder) => Try("Whoever was forgotten could not be looked for in older backups.", () =>
    {
        var (marks, steps) = database.Read(c => (ForgottenMarks.All(c), Migrator.StepsOf(c)));
        foreach (var backup in folder.List().Where(b => !b.IsSealed))
            Try("Whoever was forgotten could not be deleted from an older backup.", () => BackupCleaner.Clean(backup, marks, steps, clock.Now));
    });

    private BackupFault? Try(string failure, Action work)
    {
        try
        {
            work();
            return null;
        }
        catch (Exception e) when (BackupFaults.Of(e) is { } fault)
        {
            log.LogError(e, "{Failure}", failure);
            return fault;
        }
    }
}
