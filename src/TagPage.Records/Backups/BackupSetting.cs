using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>What the owner wants of backups.</summary>
public sealed record BackupSetting
{
    public const int LongestFolder = 300, MostDays = 60, MostWeeks = 53, MostMonths = 60;

    /// <summary>Where a second copy of each made at night or by hand goes; empty for nowhere.</summary>
    public string Folder { get; init; } = "";
    public int Days { get; init; } = BackupPlan.Usual.Days;
    public int Weeks { get; init; } = BackupPlan.Usual.Weeks;
    public int Months { get; init; } = BackupPlan.Usual.Months;

    public BackupPlan Plan => new(Days, Weeks, Months);
}
