using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>The passphrase that backups are sealed with as they leave the data folder, as the key it was made into.</summary>
public sealed class BackupSeal(DataFolder data)
{
    private string File => Path.Combine(data.Keys, "backups.seal");

    public bool IsSet => System.IO.File.Exists(File);

    /// <summary>Something should be sealed, and cannot be.</summary>
    public bool IsDamaged => IsSet && SealKey.Read(System.IO.File.ReadAllBytes(File)) is null;

    /// <summary>Null where nothing is sealed.</summary>
    /// <exception cref="IOException">The seal is damaged; nothing may travel unsealed for that.</exception>
    public SealKey? Key => !IsSet ? null
        : SealKey.Read(System.IO.File.ReadAllBytes(File)) ?? throw new IOException($"{File} is damaged; put it back from a backup, or set the passphrase for backups again.");

    public void Set(string passphrase) => KeyFiles.Write(File, SealKey.Of(passphrase).Stored, overwrite: true);

    public void Remove() => System.IO.File.Delete(File);

    /// <summary>Sealed as it is read, into a file that goes with the stream.</summary>
    public Stream Sealed(string file)
    {
        var target = new FileStream(Path.Combine(data.Uploads, Guid.NewGuid().ToString("N") + ".sealing"), new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.ReadWrite,
            Options = FileOptions.DeleteOnClose,
        });
        using (var plain = System.IO.File.OpenRead(file))
            SealedFile.Seal(plain, target, Key!);
        target.Position = 0;
        return target;
    }
}
