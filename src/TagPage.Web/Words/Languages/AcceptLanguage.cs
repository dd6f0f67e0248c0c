using System.Globalization;

namespace TagPage.Web.Words;

/// <summary>Reads what languages a browser asks for (RFC 9110, 12.5.4; matching by RFC 4647 lookup: zh-TW falls back to zh).</summary>
public static class AcceptLanguage
{
    /// <summary>More than any browser sends; the rest is ignored.</summary>
    private const int MostRanges = 32;

    /// <summary>The one of our languages that is wanted most; English if none is.</summary>
    /// <param name="header">As it came in, from anybody.</param>
    public static Language Choose(string? header)
    {
        var wanted = (header ?? "").Split(',', MostRanges + 1).Take(MostRanges).Select(Read);
        // A stable sort: of two wanted equally the first one counts.
        return wanted.Where(w => w.Language is not null && w.Quality > 0).OrderByDescending(w => w.Quality).FirstOrDefault().Language
            ?? Languages.English;
    }

    private static (Language? Language, double Quality) Read(string range)
    {
        var parts = range.Split(';');
        var tag = parts[0].Trim();
        var end = tag.IndexOf('-', StringComparison.Ordinal);
        return (Languages.Of(end < 0 ? tag : tag[..end]), parts.Length == 1 ? 1 : Quality(parts[^1].Trim()));
    }

    /// <summary>0 for anything that is not a weight between 0 and 1: such an entry is ignored.</summary>
    private static double Quality(string parameter) =>
        parameter.StartsWith("q=", StringComparison.OrdinalIgnoreCase)
        && double.TryParse(parameter.AsSpan(2), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var q)
        && q is >= 0 and <= 1
            ? q
            : 0;
}
