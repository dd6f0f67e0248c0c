using TagPage.Core.Jobs;

namespace TagPage.Web.Words;

/// <summary>Visits, as the shop reads of them.</summary>
public static class VisitWords
{
    /// <summary>"New grip, grommets".</summary>
    public static string Of(IReadOnlyList<VisitWork> works) => Languages.English.Sentence(string.Join(", ", works.Select(EnglishNames.Of)));
}
