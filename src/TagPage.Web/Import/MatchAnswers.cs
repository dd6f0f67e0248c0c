using System.Globalization;
using TagPage.Records.Import;

namespace TagPage.Web.Import;

/// <summary>Who is who, as a form asks and answers it.</summary>
public static class MatchAnswers
{
    /// <summary>As many can be decided on one page.</summary>
    public const int Most = 300;

    private const string Prefix = "match-";

    public static string FieldOf(ImportMatch match) => string.Create(CultureInfo.InvariantCulture, $"{Prefix}{match.Client.Line}");

    /// <summary>By the client's line.</summary>
    public static IReadOnlyDictionary<int, string> Of(IFormCollection form) =>
        form.Where(f => f.Key.StartsWith(Prefix, StringComparison.Ordinal) && Line(f.Key) is not null).ToDictionary(f => Line(f.Key)!.Value, f => f.Value.ToString());

    private static int? Line(string field) =>
        int.TryParse(field.AsSpan(Prefix.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var line) ? line : null;
}
