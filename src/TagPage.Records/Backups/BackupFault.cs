using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>Why a backup could not be made.</summary>
public enum BackupFault { DiskFull, FolderMissing, NotWritable, Damaged, Other }

public static class BackupFaults
{
    /// <summary>Null for what is no fault of disk or database.</summary>
    public static BackupFault? Of(Exception fault) => fault switch
    {
        UnsoundBackupException => BackupFault.Damaged,
        _ when DatabaseFault.IsDamage(fault) => BackupFault.Damaged,
        _ when DatabaseFault.IsFullDisk(fault) => BackupFault.DiskFull,
        DirectoryNotFoundException => BackupFault.FolderMissing,
        UnauthorizedAccessException => BackupFault.NotWritable,
        _ when DatabaseFault.IsUnusableFile(fault) => BackupFault.NotWritable,
        IOException or SqliteException => BackupFault.Other,
        _ => null,
    };
}
