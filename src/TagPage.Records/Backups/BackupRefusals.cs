using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>No such folder, or not named from the root on.</summary>
public sealed record BackupFolderMissing() : Refusal(nameof(BackupSetting.Folder));

/// <summary>The second folder is, holds or lies in the data folder.</summary>
public sealed record BackupFolderIsData() : Refusal(nameof(BackupSetting.Folder));

public sealed record BackupFolderNotWritable() : Refusal(nameof(BackupSetting.Folder));
