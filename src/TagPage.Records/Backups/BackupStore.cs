using Dapper;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>Makes backups, brings them to the second folder, keeps as many as were asked for, and knows how they stand.</summary>
public sealed class BackupStore(Database database, DataFolder data, BackupSettingStore settings, BackupSeal seal, BackupMemory memory, ShopClock clock, TimeProvider time, ILogger<BackupStore> log)
{
    private readonly Lock _one = new();

    private BackupFolder Own => new(data.BackupsPath);

    /// <summary>Newest first, of the data folder.</summary>
    public IReadOnlyList<BackupFile> List() => Own.List();

    public BackupState State()
    {
        var folder = settings.Get().Folder;
        var second = folder.Length == 0 ? null : new SecondState(folder, memory.SecondGood, memory.Second);
        return new BackupState(Own.Newest(clock.Now)?.MadeAt, memory.First, second);
    }

    /// <returns>Why it failed; null for one that was made and checked.</returns>
    public BackupFault? Make(string why)
    {
        lock (_one)
        {
            MakeOwn(why);
            if (memory.First is null)
                BringToSecond();
            return memory.First;
        }
    }

    /// <summary>
    /// Makes the nightly one where it is due, tries again what failed, and brings to the second folder what it lacks, as when its drive
    /// is plugged in again. A shop with nobody who signs in has nothing to lose yet.
    /// </summary>
    public void Tend()
    {
        lock (_one)
        {
            if (memory.First is not null || IsDue())
            {
                MakeOwn(BackupFile.Nightly);
                Forget();
            }
            RestoringPlace.Sweep(data, clock.Now);
            BringToSecond();
        }
    }

    private bool IsDue() => HasBegun() && BackupTime.IsDue(
        Own.Newest(clock.Now) is { } newest ? clock.OnTheWall(newest.MadeAt).DateTime : null, clock.OnTheWall(clock.Now).DateTime);

    private bool HasBegun() => database.Read(c => c.ExecuteScalar<bool>(HasBegunSql));

    private const string HasBegunSql = "SELECT EXISTS (SELECT 1 FROM account)";

    private void MakeOwn(string why) => memory.Note(Try("A backup could not be made.", () =>
    {
        new BackupMaker(database, data, time).Make(why);
        Own.Tidy(settings.Get().Plan, clock.Now);
    }));

    /// <summary>Whoever was deleted today is deleted from the backups of the days before.</summary>
    private void Forget() => Try("Whoever was forgotten could not be deleted from older backups.", () =>
    {
        var (marks, steps) = database.Read(c => (ForgottenMarks.All(c), Migrator.StepsOf(c)));
        MarkFile.Add(data.Backups, marks);
        BackupCleaner.Clean(Own, marks, steps, clock.Now);
    });

    private void BringToSecond()
    {
        var setting = settings.Get();
        if (setting.Folder.Length == 0 || Own.Newest(clock.Now) is not { } newest)
        {
            memory.NoteSecond(null, null);
            return;
        }
        var second = new BackupFolder(setting.Folder);
        var fault = Try("A backup could not be brought to the second folder.", () =>
        {
            SecondFolder.Bring(newest, second, seal);
            MarkFile.Add(second.Path, database.Read(ForgottenMarks.All));
            second.Tidy(setting.Plan, clock.Now);
        });
        memory.NoteSecond(fault, fault is null ? newest.MadeAt : memory.SecondGood);
    }

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
