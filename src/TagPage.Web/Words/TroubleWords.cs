using TagPage.Records.Troubles;

namespace TagPage.Web.Words;

/// <summary>What the owner has to see to: what happened, and what to do about it.</summary>
public sealed record TroubleWords(string What, string ToDo, string Link, string Page)
{
    /// <param name="trouble">What it is.</param>
    /// <param name="at">Writes an instant as the clock on the shop's wall shows it.</param>
    public static TroubleWords Of(Trouble trouble, Func<DateTimeOffset, string> at) => trouble switch
    {
        DatabaseDamaged => new("The records are damaged.",
            "Save as little as you can, and go back to a backup. The disk may be failing.", "Backups", "/shop/backups"),
        BackupFailed { Fault: var fault, LastGood: { } last } => new($"The last backup failed; the last good one is from {at(last)}.", BackupWords.Fault(fault), "Backups", "/shop/backups"),
        BackupFailed { Fault: var fault } => new("A backup failed, and there is no other.", BackupWords.Fault(fault), "Backups", "/shop/backups"),
        SecondBackupFailed { Fault: var fault, Folder: var folder } => new($"Backups do not reach the second folder, {folder}.", BackupWords.Fault(fault), "Backups", "/shop/backups"),
        BackupOld { LastGood: var last } => new($"The last backup is from {at(last)}.",
            "One is made each night while the program runs, or soon after it starts again. You can make one now.", "Backups", "/shop/backups"),
        DiskFilling { IsGrave: true, FreeBytes: var free } => new($"The disk is almost full: {BackupWords.Size(free)} left.",
            "Delete or move what you do not need there, or soon nothing more can be saved.", "A bad day", "/shop/help/bad-day"),
        DiskFilling { FreeBytes: var free } => new($"The disk is filling up: {BackupWords.Size(free)} left.",
            "Make room before it is full: backups are the first to fail.", "Backups", "/shop/backups"),
        MailGivenUp { All: 1 } given => new("1 email could not be sent.", Mail(given), "See which one", "/shop/nudges"),
        MailGivenUp { All: var all } given => new($"{all} emails could not be sent.", Mail(given), "See which ones", "/shop/nudges"),
        StringsLow { Strings: var n } => new(n == 1 ? "1 string is running out." : $"{n} strings are running out.", "Buy more, or count what there is.", "Stock", "/shop/stock"),
        _ => throw new ArgumentOutOfRangeException(nameof(trouble), trouble.GetType().Name, "No words for this trouble."),
    };

    private static string Mail(MailGivenUp given) => (given.FromFinders > 0 ? "Somebody who found a racket wrote, and the answer is not getting through: call instead. " : "")
        + "See which address is wrong, correct it on the client’s card, then try them all again.";
}
