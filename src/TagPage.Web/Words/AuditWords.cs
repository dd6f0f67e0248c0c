using TagPage.Records.Audit;

namespace TagPage.Web.Words;

/// <summary>What happened, as the owner and whoever reads the program's log read it.</summary>
public static class AuditWords
{
    public static string Of(AuditEvent what) => what switch
    {
        AuditEvent.SignedIn => "Signed in",
        AuditEvent.SignedOut => "Signed out",
        AuditEvent.SignInFailed => "Sign-in failed: wrong name or password",
        AuditEvent.SignInRefused => "Sign-in refused: too many tries",
        AuditEvent.SignInPutOff => "Sign-in put off: too many at once",
        AuditEvent.CodeWrong => "Sign-in failed: right password, wrong code",
        AuditEvent.CodeRefused => "Sign-in refused: right password, too many wrong codes",
        AuditEvent.PasskeyRefused => "Passkey refused",
        AuditEvent.BrowserSignedOut => "Another browser signed out",
        AuditEvent.OthersSignedOut => "All other browsers signed out",
        AuditEvent.PasswordChanged => "Password changed",
        AuditEvent.CodesOn => "Codes from an authenticator app switched on",
        AuditEvent.CodesOff => "Codes from an authenticator app switched off",
        AuditEvent.RecoveryCodesMade => "New recovery codes made",
        AuditEvent.PasskeyMade => "Passkey made",
        AuditEvent.PasskeyRemoved => "Passkey removed",
        AuditEvent.ContactShown => "Contact details shown to a finder",
        AuditEvent.FindersRefused => "Finders refused: too often",
        AuditEvent.TagCodesRefused => "Refused: too many wrong tag codes",
        AuditEvent.ClientDownloaded => "A client downloaded their data",
        AuditEvent.ClientErased => "A client’s data deleted",
        AuditEvent.BackupDownloaded => "Backup downloaded",
        AuditEvent.WentBack => "Went back to a backup",
        AuditEvent.SettingChanged => "Settings saved",
        _ => $"Event {(int)what} of a newer version",
    };
}
