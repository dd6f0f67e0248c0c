namespace TagPage.Records.Backups;

/// <summary>Why a file is not what to go back to.</summary>
public enum RestoreFault
{
    Missing, IsFolder, IsLink, Unreadable, Empty, TooLarge, NoRoom, HasLog, NoBackup, OtherProgram, Cut, Damaged, LooseRows, Newer, OtherTables, Changed,
    NeedsPassphrase, WrongPassphrase, NotPutAside, LiveUnreadable,
}

/// <summary>A file that cannot be gone back to; the live data is as it was.</summary>
/// <param name="fault">Why.</param>
/// <param name="finding">What SQLite or the program says about it, if anything.</param>
public sealed class NotRestoredException(RestoreFault fault, string finding = "") : Exception(fault + " " + finding)
{
    public RestoreFault Fault { get; } = fault;

    public string Finding { get; } = finding;
}
