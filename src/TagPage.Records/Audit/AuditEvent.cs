namespace TagPage.Records.Audit;

/// <summary>What is written down. The numbers are those of the log’s events and are kept for good.</summary>
public enum AuditEvent
{
    SignedIn = 1001,
    SignedOut = 1002,
    SignInFailed = 1003,
    SignInRefused = 1004,
    SignInPutOff = 1005,
    CodeWrong = 1006,
    CodeRefused = 1007,
    PasskeyRefused = 1008,
    PinWrong = 1009,
    BrowserSignedOut = 1010,
    OthersSignedOut = 1011,
    PasswordChanged = 1020,
    CodesOn = 1021,
    CodesOff = 1022,
    RecoveryCodesMade = 1023,
    PasskeyMade = 1024,
    PasskeyRemoved = 1025,
    PinSet = 1026,
    PinRemoved = 1027,
    HelperInvited = 1030,
    HelperSignedOut = 1031,
    AccessEnded = 1032,
    BrowserShared = 1033,
    BrowserUnshared = 1034,
    ContactShown = 1101,
    FindersRefused = 1102,

    /// <summary>Only in the log: looking at a page writes nothing.</summary>
    TagCodesRefused = 1103,

    ClientDownloaded = 1201,
    ClientErased = 1202,
    ShopDownloaded = 1203,
    ShopTakenIn = 1204,
    ListBroughtIn = 1205,
    ListTakenBack = 1206,
    FilesBroughtIn = 1207,
    BackupDownloaded = 1301,
    WentBack = 1302,
    SettingChanged = 1401,
}
