namespace TagPage.Web.Http.SignIn;

public static class AccountLimits
{
    public const int Name = 60;

    /// <summary>Long enough for any sentence and any password manager, short enough to hash.</summary>
    public const int Password = 200;

    /// <summary>15 are advised; no rule asks for digits or signs (OWASP ASVS 5.0, 6.2.1, 6.2.5 and 6.2.9).</summary>
    public const int ShortestPassword = 12;

    public const string PasswordHint = "At least 12 characters, better 15 or more. Four words that do not belong together are easy to remember.";
}
