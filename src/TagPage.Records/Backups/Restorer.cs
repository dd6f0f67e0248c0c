using Microsoft.Data.Sqlite;
using TagPage.Records.Privacy;
using TagPage.Records.Search;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>
/// Goes back to a backup. The file is taken into a folder of its own, looked through, brought up to date, and rid of whoever was
/// forgotten since; the live data is put aside as a backup; and then all its pages are replaced in one transaction of SQLite's, so that
/// a power cut leaves the one or the other.
/// </summary>
public sealed class Restorer(Database database, DataFolder data, BackupStore backups, NameKeeper names, IReadOnlyList<Migration> known, TimeProvider clock, ILogger<Migrator> log)
{
    private readonly Lock _one = new();

    /// <summary>What the shop holds now, to be seen beside what a backup holds.</summary>
    public BackupContents Live() => database.Read(BackupContents.Of);

    /// <summary>Looks into a file; changes nothing.</summary>
    /// <exception cref="NotRestoredException">It is nothing to go back to.</exception>
    public BackupContents Look(string file, string? passphrase)
    {
        using var place = new RestoringPlace(data);
        Incoming.Take(file, place.Folder, known, passphrase);
        using var connection = FullCheck.Open(place.Folder.DatabaseFile);
        return BackupContents.Of(connection);
    }

    /// <param name="file">To go back to.</param>
    /// <param name="passphrase">Where it is sealed.</param>
    /// <param name="account">Who does it; empty from the command line.</param>
    /// <returns>The backup of what was there before.</returns>
    /// <exception cref="NotRestoredException">The file is nothing to go back to, or the live data could not be put aside; nothing has changed.</exception>
    public string Restore(string file, string? passphrase, string account = "")
    {
        lock (_one)
        {
            using var place = new RestoringPlace(data);
            Incoming.Take(file, place.Folder, known, passphrase);
            var aside = "";
            // What is written meanwhile would be in neither.
            database.Hold(() =>
            {
                aside = PutAside();
                var live = database.Read(LiveState.Of);
                Prepare(place.Folder, [.. live.Marks, .. MarksBeside(file)], live, Path.GetFileName(file), account);
                database.ReplaceWith(place.Folder.DatabaseFile);
            });
            names.Begin();
            return aside;
        }
    }

    /// <summary>
    /// The same where the live database is missing or damaged, for a program that has it to itself and has not opened it. Whatever
    /// belongs to it is moved aside; keys come from the backup where the folder has none.
    /// </summary>
    /// <returns>Where what was there lies now; null where nothing was.</returns>
    public static string? RestoreInto(DataFolder data, string file, string? passphrase, IReadOnlyList<Migration> known, TimeProvider clock, ILogger<Migrator> log)
    {
        using var place = new RestoringPlace(data);
        Incoming.Take(file, place.Folder, known, passphrase);
        Prepare(place.Folder, MarksBeside(file).Concat(MarkFile.Read(data.BackupsPath)), live: null, Path.GetFileName(file), "", known, clock, log);
        var aside = MoveAside(data, clock.GetUtcNow());
        if (!KeyFiles.Any(data))
            KeyFiles.CopyTo(place.Folder, data);
        File.Move(place.Folder.DatabaseFile, data.DatabaseFile);
        return aside;
    }

    private string PutAside() => backups.Make(BackupFile.BeforeRestore, out var made) switch
    {
        null => made!.Path,
        BackupFault.Damaged => CopyDamaged(),
        BackupFault.DiskFull => throw new NotRestoredException(RestoreFault.NoRoom),
        var fault => throw new NotRestoredException(RestoreFault.NotPutAside, fault.ToString()!),
    };

    /// <summary>It does not pass the check of a backup, and is what somebody wants to get away from.</summary>
    private string CopyDamaged()
    {
        var file = Path.Combine(data.Backups, FormattableString.Invariant($"damaged-{clock.GetUtcNow():yyyyMMdd-HHmmss}.db"));
        try
        {
            database.CopyTo(file);
            return file;
        }
        catch (SqliteException e) when (DatabaseFault.IsDamage(e))
        {
            File.Delete(file);
            throw new NotRestoredException(RestoreFault.LiveUnreadable, e.Message);
        }
    }

    private void Prepare(DataFolder place, IEnumerable<string> marks, LiveState live, string file, string account) =>
        Prepare(place, marks.Concat(MarkFile.Read(data.BackupsPath)), live, file, account, known, clock, log);

    private static void Prepare(DataFolder place, IEnumerable<string> marks, LiveState? live, string file, string account, IReadOnlyList<Migration> known, TimeProvider clock, ILogger<Migrator> log)
    {
        try
        {
            using var ready = new Database(place);
            new Migrator(ready, place, clock, known, log).Run();
            ready.Write(c => ComingBack.Settle(c, [.. marks.Distinct()], live, file, account, clock.GetUtcNow()));
            KeyFiles.RefuseDamaged(place);
        }
        catch (Exception e) when (e is SqliteException or CannotStartException && !DatabaseFault.IsFullDisk(e))
        {
            throw new NotRestoredException(RestoreFault.Damaged, e.Message);
        }
    }

    private static IEnumerable<string> MarksBeside(string file) => MarkFile.Read(Path.GetDirectoryName(Path.GetFullPath(file))!);

    private static string? MoveAside(DataFolder data, DateTimeOffset now)
    {
        var files = Directory.EnumerateFiles(data.Root, Path.GetFileName(data.DatabaseFile) + "*").ToList();
        if (files.Count == 0)
            return null;
        var aside = Directory.CreateDirectory(Path.Combine(data.Root, FormattableString.Invariant($"replaced-{now:yyyyMMdd-HHmmss}"))).FullName;
        foreach (var file in files)
            File.Move(file, Path.Combine(aside, Path.GetFileName(file)));
        return aside;
    }
}
