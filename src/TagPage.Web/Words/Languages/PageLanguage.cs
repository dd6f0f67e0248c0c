using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.WebUtilities;

namespace TagPage.Web.Words;

/// <summary>The language a page is written in: the one in its address (?lang=), else what the phone asks for.</summary>
/// <param name="Language">One of ours.</param>
/// <param name="IsChosen">Whether it is in the address; then the page's links keep it.</param>
public sealed record PageLanguage(Language Language, bool IsChosen)
{
    private const string Key = "lang";

    public Phrases Phrases => Language.Phrases;

    public static PageLanguage Of(HttpContext context)
    {
        if (context.Items.TryGetValue(typeof(PageLanguage), out var known))
            return (PageLanguage)known!;
        var language = Choose(context);
        context.Items[typeof(PageLanguage)] = language;
        return language;
    }

    /// <summary>Sets it for the rest of the request, if a page knows better.</summary>
    public static void Use(HttpContext context, PageLanguage language) => context.Items[typeof(PageLanguage)] = language;

    /// <summary>A link on the page.</summary>
    /// <param name="path">Begins with a slash and has no query.</param>
    public string Link(string path) => IsChosen ? $"{path}?{Key}={Language.Code}" : path;

    private static PageLanguage Choose(HttpContext context) =>
        Languages.Of(Asked(context)) is { } chosen
            ? new PageLanguage(chosen, true)
            : new PageLanguage(AcceptLanguage.Choose(context.Request.Headers.AcceptLanguage), false);

    /// <summary>An error page replaces another page, and keeps the language of that page's address.</summary>
    private static string? Asked(HttpContext context) =>
        context.Features.Get<IStatusCodeReExecuteFeature>()?.OriginalQueryString is { } original
            ? QueryHelpers.ParseQuery(original).GetValueOrDefault(Key)
            : context.Request.Query[Key];
}
