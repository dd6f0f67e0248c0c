namespace TagPage.Web.Words.OwnPage;

/// <summary>The own page's words by language, and which language a client reads it in.</summary>
public static class OwnPageWords
{
    private static readonly Dictionary<Language, OwnPagePhrases> Files = Languages.All
        .Where(l => PhraseFile.Has(Name(l)))
        .ToDictionary(l => l, l => PhraseFile.Read<OwnPagePhrases>(Name(l)));

    /// <summary>The languages the own page is written in.</summary>
    public static IReadOnlyList<Language> Spoken { get; } = [.. Languages.All.Where(Files.ContainsKey)];

    public static OwnPagePhrases Of(Language language) => Files.GetValueOrDefault(language) ?? Files[Languages.English];

    /// <summary>The same language if the own page is written in it, otherwise English.</summary>
    public static Language Fitting(Language language) => Files.ContainsKey(language) ? language : Languages.English;

    /// <summary>
    /// Settles the language of a page: the one in its address, else the one on the client's file, else what the phone
    /// asks for.
    /// </summary>
    /// <param name="context">The request.</param>
    /// <param name="onFile">The client's language; null where nobody has signed in.</param>
    public static PageLanguage Settle(HttpContext context, string? onFile)
    {
        var asked = PageLanguage.Of(context);
        var language = asked.IsChosen ? asked.Language : Languages.Of(onFile) ?? asked.Language;
        var settled = new PageLanguage(Fitting(language), asked.IsChosen);
        PageLanguage.Use(context, settled);
        return settled;
    }

    private static string Name(Language language) => $"TagPage.Web.Words.OwnPage.{language.Code}.json";
}
