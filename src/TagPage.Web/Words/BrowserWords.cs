namespace TagPage.Web.Words;

public static class BrowserWords
{
    /// <summary>All browsers on phones say “Mobi” of themselves, and hardly any other.</summary>
    public static string Kind(string browser) => browser.Contains("Mobi", StringComparison.OrdinalIgnoreCase) ? "Phone" : "Computer or tablet";
}
