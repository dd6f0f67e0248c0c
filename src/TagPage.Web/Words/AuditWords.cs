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
        AuditEvent.PinWrong => "Wrong PIN",
        AuditEvent.PinSet => "PIN set",
        AuditEvent.PinRemoved => "PIN removed",
        AuditEvent.BrowserShared => "Browser marked as shared",
        AuditEvent.BrowserUnshared => "Browser no longer shared",
        AuditEvent.BrowserSignedOut => "Another browser signed out",
        AuditEvent.OthersSignedOut => "All other browsers signed out",
        AuditEvent.PasswordChanged => "Password changed",
        AuditEvent.CodesOn => "Codes from an authenticator app switched on",
        AuditEvent.CodesOff => "Codes from an authenticator app switched off",
        AuditEvent.RecoveryCodesMade => "New recovery codes made",
        AuditEvent.PasskeyMade => "Passkey made",
        AuditEvent.PasskeyRemoved => "Passkey removed",
        AuditEvent.HelperInvited => "Link made with which a helper chooses a password",
        AuditEvent.HelperSignedOut => "Helper signed out everywhere",
        AuditEvent.AccessEnded => "Helper’s access taken away",
        AuditEvent.ContactShown => "Contact details shown to a finder",
        AuditEvent.FindersRefused => "Finders refused: too often",
        AuditEvent.TagCodesRefused => "Refused: too many wrong tag codes",
        AuditEvent.ShopDownloaded => "All records were downloaded",
        AuditEvent.ShopTakenIn => "Another shop’s records were taken in",
        AuditEvent.ListBroughtIn => "A list of stringings was brought in",
        AuditEvent.ListTakenBack => "A list of stringings was taken back",
        AuditEvent.FilesBroughtIn => "Records were brought in from files",
        AuditEvent.ClientDownloaded => "A client downloaded their data",
        AuditEvent.ClientErased => "A client’s data deleted",
        AuditEvent.BackupDownloaded => "Backup downloaded",
        AuditEvent.WentBack => "Went back to a backup",
        AuditEvent.SettingChanged => "Settings saved",
        _ => $"Event {(int)what} of a newer version",
    };

    /// <summary>With what it was about; of settings, the topic whose page saved them.</summary>
    public static string Of(AuditEvent what, string detail) => what switch
    {
        _ when detail.Length == 0 => Of(what),
        AuditEvent.SettingChanged => $"{Of(what)}: {Topic(detail)}",
        _ => $"{Of(what)}, {detail}",
    };

    /// <summary>As Settings lists it, by the page under /Shop/; a page of an older version as it was called there.</summary>
    private static string Topic(string page) => page switch
    {
        "Settings/Address" => "Web address",
        "Settings/Bench" => "The bench",
        "Settings/Check" => "Is everything set up?",
        "Settings/Customising" => "Measuring and customising",
        "Settings/HomePage" => "Your page",
        "Settings/Hours" or "Settings/Closed" => "Opening hours",
        "Settings/Lives" => "String lives",
        "Settings/LivesReset" => "String lives, back to the starting values",
        "Settings/Messages" => "Messages",
        "Settings/Program" => "The program",
        "Settings/Reminders" => "Reminders",
        "Settings/Shop" => "The shop",
        "Settings/Tension" => "Tension loss and breaks",
        "Backups/Settings" or "Backups/Passphrase" => "Backups",
        "Money/Prices" => "Prices and payment",
        "Labels/Settings" => "How labels are printed",
        "People/Index" => "A second step for helpers",
        _ when page.StartsWith("Settings/Care/", StringComparison.Ordinal) => "Care guides",
        _ when page.StartsWith("Settings/Instruments/", StringComparison.Ordinal) => "Instruments",
        _ => page,
    };
}
