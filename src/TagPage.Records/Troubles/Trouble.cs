using TagPage.Records.Backups;

namespace TagPage.Records.Troubles;

/// <summary>Something that the owner has to see to, with the data that goes with it.</summary>
/// <param name="IsGrave">Something is being lost, or will be soon.</param>
public abstract record Trouble(bool IsGrave);

/// <summary>The daily check found the database damaged.</summary>
public sealed record DatabaseDamaged() : Trouble(true);

public sealed record BackupFailed(BackupFault Fault, DateTimeOffset? LastGood) : Trouble(true);

public sealed record SecondBackupFailed(BackupFault Fault, string Folder) : Trouble(true);

/// <summary>None was made for days, as when the program did not run.</summary>
public sealed record BackupOld(DateTimeOffset LastGood) : Trouble(false);

public sealed record DiskFilling(long FreeBytes, bool IsGrave) : Trouble(IsGrave);

/// <summary>Of these strings so little is left that it is time to buy.</summary>
public sealed record StringsLow(int Strings) : Trouble(false);

/// <param name="All">Emails that were given up.</param>
/// <param name="FromFinders">Those among them that tell somebody where their racket is.</param>
public sealed record MailGivenUp(int All, int FromFinders) : Trouble(FromFinders > 0);
