using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace TagPage.Labels.Content;

/// <summary>Which elements of an SVG its style sheets let lead to others: .leaf { fill: url(#green) }</summary>
internal sealed partial class DrawingStyles
{
    private readonly Dictionary<string, List<string>> _byClass = [];

    private DrawingStyles(int rules) => Rules = rules;

    /// <summary>How many rules there are.</summary>
    public long Rules { get; }

    /// <summary>Null where a rule that leads to another element is tied to anything but a class: drawing programs write none.</summary>
    public static DrawingStyles? Read(XElement root)
    {
        var sheets = root.Descendants().Where(e => e.Name.LocalName == "style").Select(e => e.Value).ToList();
        var rules = sheets.SelectMany(sheet => Rule().Matches(Remark().Replace(sheet, ""))).ToList();
        var styles = new DrawingStyles(rules.Count);
        // One outside the rules found here is where another reader may find it.
        var isWhole = sheets.Sum(sheet => References(sheet).Count()) == rules.Sum(rule => References(rule.Groups[2].Value).Count());
        return isWhole && rules.TrueForAll(rule => styles.Add(rule.Groups[1].Value, rule.Groups[2].Value)) ? styles : null;
    }

    private bool Add(string selectors, string declarations)
    {
        var targets = References(declarations).ToList();
        if (targets.Count == 0)
            return true;
        foreach (var selector in selectors.Split(',', StringSplitOptions.TrimEntries))
        {
            if (!OneClass().IsMatch(selector))
                return false;
            if (!_byClass.TryGetValue(selector[1..], out var known))
                _byClass[selector[1..]] = known = [];
            known.AddRange(targets);
        }
        return true;
    }

    public IEnumerable<string> Of(XElement element) =>
        (element.Attribute("class")?.Value ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Distinct()
            .SelectMany(name => _byClass.GetValueOrDefault(name) ?? []);

    /// <summary>The ids in url(#id).</summary>
    public static IEnumerable<string> References(string value) => Reference().Matches(value).Select(m => m.Groups[1].Value);

    [GeneratedRegex(@"url\(\s*[""']?\s*#([^""')\s]+)", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Reference();

    [GeneratedRegex(@"([^{}]*)\{([^{}]*)\}", RegexOptions.None, 1000)]
    private static partial Regex Rule();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline, 1000)]
    private static partial Regex Remark();

    [GeneratedRegex(@"^\.[A-Za-z_][\w-]*$", RegexOptions.None, 1000)]
    private static partial Regex OneClass();
}
