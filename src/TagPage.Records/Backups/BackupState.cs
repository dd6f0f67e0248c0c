namespace TagPage.Records.Backups;

/// <summary>
/// How backups stand. The data folder's own files tell what is good, so that a full disk needs no room to say so; what failed is
/// remembered, and the second folder looked at in the background, since a drive that hangs must hold up no page. A program that
/// starts anew tries at once and knows again.
/// </summary>
/// <param name="LastGood">When the newest was made that passed its check; null for none.</param>
/// <param name="Fault">Why the last try failed; null where it did not.</param>
/// <param name="Second">The same of the second folder; null where none is named.</param>
public sealed record BackupState(DateTimeOffset? LastGood, BackupFault? Fault, SecondState? Second);

public sealed record SecondState(string Folder, DateTimeOffset? LastGood, BackupFault? Fault);
