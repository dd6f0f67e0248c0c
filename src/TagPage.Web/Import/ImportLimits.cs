namespace TagPage.Web.Import;

/// <summary>What a file may hold; the same as the forms take.</summary>
internal static class ImportLimits
{
    /// <summary>What was strung longer ago is hardly waiting to be collected.</summary>
    public const int DaysUntilSettled = 30;

    /// <summary>As many as a double has, which keeps what was typed and what was worked out.</summary>
    public const int Decimals = 20;

    public const int Note = 500;
    public const int MostWeeks = 104;
    public const decimal LeastGaugeMm = 0.5m, MostGaugeMm = 1.6m;
    public const int LeastPattern = 8, MostPattern = 40;
    public const int MostTicket = 999_999_999;
    public const decimal MostPrice = 100_000;
    public const int HomeLetters = 20_000;
}
