using System.Security.Cryptography;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>The folder, perhaps on another drive, that a second copy of each backup made for the long run goes to.</summary>
internal static class SecondFolder
{
    /// <summary>Brings a backup there, unless it is there already, and reads it back.</summary>
    /// <returns>False where it was there.</returns>
    /// <exception cref="DirectoryNotFoundException">The folder is not there: a drive is not plugged in.</exception>
    public static bool Bring(BackupFile backup, BackupFolder folder, BackupSeal seal)
    {
        if (!Directory.Exists(folder.Path))
            throw new DirectoryNotFoundException();
        var key = seal.Key;
        var there = backup.In(folder.Path, isSealed: key is not null);
        if (File.Exists(there.Path))
            return false;
        BackupFolder.Place(there, unfinished =>
        {
            CopyToDisk(backup.Path, unfinished, key);
            if (!Sum(unfinished, key).SequenceEqual(Sum(backup.Path, key: null)))
                throw new UnsoundBackupException("what was written to the second folder is not what was read back from it");
        });
        return true;
    }

    /// <summary>Readable by nobody else, and on the disk before it gets its name.</summary>
    private static void CopyToDisk(string from, string to, SealKey? key)
    {
        using (var source = File.OpenRead(from))
        using (var target = new FileStream(to, FileMode.CreateNew, FileAccess.Write))
        {
            if (key is null)
                source.CopyTo(target);
            else
                SealedFile.Seal(source, target, key);
            target.Flush(flushToDisk: true);
        }
        DataFolder.CloseToOthers(to);
    }

    /// <summary>Of what is in it, unsealed where it is sealed.</summary>
    private static byte[] Sum(string file, SealKey? key)
    {
        using var stream = File.OpenRead(file);
        if (key is null)
            return SHA256.HashData(stream);
        using var sum = SHA256.Create();
        using (var plain = new CryptoStream(Stream.Null, sum, CryptoStreamMode.Write))
            if (!SealedFile.Open(stream, plain, (_, _) => key))
                return [];
        return sum.Hash!;
    }
}
