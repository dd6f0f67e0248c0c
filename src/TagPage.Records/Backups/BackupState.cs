namespace TagPage.Records.Backups;

/// <summary>How backups stand.</summary>
/// <param name="LastGood">When the newest was made that passed its check; null for none.</param>
/// <param name="Fault">Why the last try failed; null where it did not.</param>
/// <param name="Second">The same of the second folder; null where none is named.</param>
public sealed record BackupState(DateTimeOffset? LastGood, BackupFault? Fault, SecondState? Second);

public sealed record SecondState(string Folder, DateTimeOffset? LastGood, BackupFault? Fault);

/// <summary>
/// What the last tries came to. The data folder's own files tell what is good, so that a full disk needs no room to say so; the second
/// folder is looked at in the background only, since a drive that hangs must hold up no page. A program that starts anew
/// tries at once and knows again.
/// </summary>
public sealed class BackupMemory
{
    private volatile Tries _tries = new(null, null, null);

    private sealed record Tries(BackupFault? First, BackupFault? Second, DateTimeOffset? SecondGood);

    public BackupFault? First => _tries.First;

    public BackupFault? Second => _tries.Second;

    public DateTimeOffset? SecondGood => _tries.SecondGood;

    internal void Note(BackupFault? fault) => _tries = _tries with { First = fault };

    internal void NoteSecond(BackupFault? fault, DateTimeOffset? good) => _tries = _tries with { Second = fault, SecondGood = good };
}
