using System.Text.RegularExpressions;
using TagPage.Core.Colour;

namespace TagPage.Web.Http;

/// <summary>Turns a shop's accent into style rules, readable on the grounds of the given sheet in light and in dark.</summary>
public sealed partial class AccentStyle(string css)
{
    /// <summary>Rules to follow the sheet's own; on paper the accent stays black.</summary>
    public string Of(string? accent) =>
        Rgb.TryParse(accent, out var wish)
            ? $"\n@media screen{{{Rule(wish, 0)}}}\n@media screen and (prefers-color-scheme:dark){{{Rule(wish, 1)}}}"
            : "";

    private string Rule(Rgb wish, int scheme)
    {
        var accent = On(wish, scheme);
        return $":root{{--accent:{accent.Colour};--on-accent:{accent.Text}}}";
    }

    /// <summary>The colour asked for, as the pages use it, in light (0) or in dark (1).</summary>
    public Accent On(Rgb wish, int scheme) =>
        Accent.On(wish, [Token("paper", scheme), Token("raised", scheme)], Token("raised", 0), Token("ink", 0));

    /// <summary>A colour token as the sheet defines it: first for light, then once more for dark.</summary>
    private Rgb Token(string name, int scheme) =>
        Rgb.Parse(Tokens().Matches(css).Where(m => m.Groups["name"].Value == name).ElementAt(scheme).Groups["colour"].Value);

    [GeneratedRegex("--(?<name>[a-z-]+):\\s*(?<colour>#[0-9A-Fa-f]{6})")]
    private static partial Regex Tokens();
}
