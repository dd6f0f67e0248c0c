using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>Why a backup could not be made.</summary>
public enum BackupFault { DiskFull, FolderMissing, NotAFolder, NotWritable, Damaged, Other }

public static class BackupFaults
{
    /// <summary>EROFS and EEXIST of Linux and macOS, ERROR_ALREADY_EXISTS of Windows.</summary>
    private const int ReadOnlyDisk = 30, FileThere = 17, FileThereOnWindows = unchecked((int)0x800700B7);

    /// <summary>Null for what is no fault of disk or database.</summary>
    public static BackupFault? Of(Exception fault) => fault switch
    {
        UnsoundBackupException => BackupFault.Damaged,
        _ when DatabaseFault.IsDamage(fault) => BackupFault.Damaged,
        _ when DatabaseFault.IsFullDisk(fault) => BackupFault.DiskFull,
        DirectoryNotFoundException => BackupFault.FolderMissing,
        UnauthorizedAccessException or IOException { HResult: ReadOnlyDisk } => BackupFault.NotWritable,
        IOException { HResult: FileThere or FileThereOnWindows } => BackupFault.NotAFolder,
        _ when DatabaseFault.IsUnusableFile(fault) => BackupFault.NotWritable,
        IOException or SqliteException => BackupFault.Other,
        _ => null,
    };
}
