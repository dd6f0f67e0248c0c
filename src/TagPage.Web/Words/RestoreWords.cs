using TagPage.Records.Backups;

namespace TagPage.Web.Words;

/// <summary>Why a file is not what to go back to, and what to do. The records are as they were.</summary>
public static class RestoreWords
{
    public static string Of(RestoreFault fault) => Sentence(fault) + " Nothing was changed.";

    private static string Sentence(RestoreFault fault) => fault switch
    {
        RestoreFault.Missing => "There is no such file.",
        RestoreFault.IsFolder => "This is a folder. Name the backup file that is in it.",
        RestoreFault.IsLink => "This is a link to another file. Name that file itself.",
        RestoreFault.Unreadable => "The program is not allowed to read this file. Give read permission to the user it runs as.",
        RestoreFault.Empty => "The file is empty. It was probably cut off while it was copied: copy it again.",
        RestoreFault.TooLarge => "The file is larger than any backup of this program.",
        RestoreFault.NoRoom => "There is too little room on the disk to go back safely. Make room first.",
        RestoreFault.HasLog => "Next to the file is another that belongs to it (-wal or -journal): it was copied while a program was writing to it. Use a backup that the program made.",
        RestoreFault.NoBackup => "This is not a backup of this program, or its beginning is damaged. Use another file.",
        RestoreFault.OtherProgram => "This file belongs to another program. Use another file.",
        RestoreFault.Cut => "A part of the file is missing. It was probably cut off while it was copied: copy it again.",
        RestoreFault.Damaged => "The file is damaged. Use another backup.",
        RestoreFault.LooseRows => "The file is not whole: rows in it refer to others that are not there. Use another backup.",
        RestoreFault.Newer => "It was made by a newer version of the program. Start that version, then go back to it.",
        RestoreFault.OtherTables => "It was made by another version of the program, whose tables differ. Start that version, then go back to it.",
        RestoreFault.Changed => "Its tables were changed by hand or by another program. Use a backup as this program made it.",
        RestoreFault.NeedsPassphrase => "This backup is sealed. Enter its passphrase.",
        RestoreFault.WrongPassphrase => "The passphrase does not fit, or the file was damaged or cut off.",
        RestoreFault.LiveUnreadable => "What is there now is so damaged that the running program can no longer read it. Stop the program and go back with TagPage.Web restore, as “A bad day” in the manual says.",
        _ => "What is there now could not be backed up first. Look under Backups to see why.",
    };
}
