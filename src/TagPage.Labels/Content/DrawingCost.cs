using System.Xml.Linq;

namespace TagPage.Labels.Content;

/// <summary>
/// What drawing an SVG would take, worked out before it is drawn: every element counts as often as it is painted, through
/// all that uses, fills, masks or cuts with it. A kilobyte of nested repetition can stand for more shapes than can ever be drawn.
/// </summary>
internal sealed class DrawingCost
{
    /// <summary>Elements painted, repetitions included.</summary>
    private const long MostPainted = 10_000;

    /// <summary>Characters of attributes of all that is painted; paths and dashes stand in them.</summary>
    private const long MostCharacters = 600_000;

    /// <summary>Elements within elements. Whoever draws calls itself for each.</summary>
    private const int MostNested = 100;

    /// <summary>Elements that lead to another, which leads to another.</summary>
    private const int MostLinked = 8;

    /// <summary>Rules of a sheet times the elements they are tried on.</summary>
    private const long MostMatches = 1_000_000;

    private readonly ILookup<string, XElement> _byId;
    private readonly Dictionary<XElement, Sum?> _sums = [];
    private readonly DrawingStyles _styles;

    private DrawingCost(XElement root, DrawingStyles styles)
    {
        _styles = styles;
        _byId = root.DescendantsAndSelf().Where(e => e.Attribute("id") is not null).ToLookup(e => e.Attribute("id")!.Value);
    }

    /// <summary>Null where it never ends.</summary>
    private sealed record Sum(long Painted, long Characters, int Nested, int Linked)
    {
        public static Sum Of(XElement element) => new(1, element.Attributes().Sum(a => (long)a.Value.Length), 1, 0);

        public Sum With(Sum other, long times, int link) => new(
            Math.Min(MostPainted + 1, Painted + times * other.Painted), Math.Min(MostCharacters + 1, Characters + times * other.Characters),
            Math.Max(Nested, other.Nested + 1), Math.Max(Linked, other.Linked + link));

        public bool IsTooMuch => Painted > MostPainted || Characters > MostCharacters || Nested > MostNested || Linked > MostLinked;
    }

    public static bool IsTooMuch(XElement root)
    {
        if (Depth(root) > MostNested || DrawingStyles.Read(root) is not { } styles)
            return true;
        var elements = root.DescendantsAndSelf().Count();
        return styles.Rules * elements > MostMatches || new DrawingCost(root, styles).Of(root) is not { IsTooMuch: false };
    }

    private static int Depth(XElement root)
    {
        var (deepest, depth) = (0, 0);
        using var reader = root.CreateReader();
        while (reader.Read())
            (deepest, depth) = (Math.Max(deepest, reader.Depth), reader.Depth);
        return deepest;
    }

    /// <summary>Calls itself no deeper than what is nested and linked may be, since it stops at the first sum that is too much.</summary>
    private Sum? Of(XElement element, int depth = 0)
    {
        if (_sums.TryGetValue(element, out var known))
            return known;
        if (depth > MostNested * (MostLinked + 1))
            return null;
        _sums[element] = null;
        var sum = Sum.Of(element);
        foreach (var child in element.Elements())
            sum = Add(sum, child, depth, times: 1, link: 0);
        // A pattern is handed down to all that stands within, and painted anew for each.
        foreach (var target in Targets(element).OrderBy(IsPattern))
            sum = Add(sum, target, depth, IsPattern(target) ? sum?.Painted ?? 1 : 1, link: 1);
        return _sums[element] = sum;
    }

    private Sum? Add(Sum? sum, XElement other, int depth, long times, int link) =>
        sum is { IsTooMuch: false } && Of(other, depth + 1) is { } more ? sum.With(more, times, link) : null;

    private static bool IsPattern(XElement element) => element.Name.LocalName == "pattern";

    private IEnumerable<XElement> Targets(XElement element) => element.Attributes().Where(a => !a.IsNamespaceDeclaration)
        .SelectMany(a => a.Name.LocalName == "href" ? [a.Value.TrimStart('#')] : DrawingStyles.References(a.Value))
        .Concat(_styles.Of(element))
        .SelectMany(id => _byId[id]);
}
