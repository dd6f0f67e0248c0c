using System.Diagnostics;
using System.Text;
using TagPage.Labels.Content;
using TagPage.Labels.Render;
using TagPage.Web.Tests.Cast;

namespace TagPage.Labels.Tests.Layout;

/// <summary>Small drawings that would take for ever, or end the program, if they were drawn.</summary>
[Long]
public class LogoBombTests
{
    private const string Dot = "<rect id='z' width='9' height='9'/>";

    public static TheoryData<string, string> Bombs => new()
    {
        { "uses itself", "<g id='a'><use href='#a'/></g>" },
        { "uses itself by the older name", "<g id='a'><use xmlns:x='http://www.w3.org/1999/xlink' x:href='#a'/></g>" },
        { "two that use each other", "<g id='a'><use href='#b'/></g><g id='b'><use href='#a'/></g>" },
        { "a chain of uses", Dot + string.Concat(Enumerable.Range(1, 900).Select(n => $"<use id='u{n}' href='#{(n == 1 ? "z" : $"u{n - 1}")}'/>")) },
        { "groups within groups", Nested(2000) },
        { "pattern filled with itself", "<pattern id='p' width='1' height='1'><rect width='1' height='1' fill='url(#p)'/></pattern><rect width='9' height='9' fill='url(#p)'/>" },
        { "pattern filled with itself by a style", "<pattern id='p' width='1' height='1'><rect width='1' height='1' style='fill: url( \"#p\" )'/></pattern><rect width='9' height='9' fill='url(#p)'/>" },
        { "pattern filled with itself by a sheet", "<style>.a{fill:url(#p)}</style><pattern id='p' width='1' height='1'><rect class='a' width='1' height='1'/></pattern><rect class='a' width='9' height='9'/>" },
        { "mask masked by itself", "<mask id='m'><rect mask='url(#m)' width='9' height='9'/></mask><rect mask='url(#m)' width='9' height='9'/>" },
        { "clip clipped by itself", "<clipPath id='c' clip-path='url(#c)'><rect width='9' height='9'/></clipPath><rect clip-path='url(#c)' width='9' height='9'/>" },
        { "gradients that follow each other", "<linearGradient id='a' href='#b'/><linearGradient id='b' href='#a'/><rect fill='url(#a)' width='9' height='9'/>" },
        { "a pattern handed down to thousands", $"<pattern id='p' width='.1' height='.1'>{string.Concat(Enumerable.Repeat(Dot, 100))}</pattern><g fill='url(#p)'>{string.Concat(Enumerable.Repeat("<rect width='9' height='9'/>", 1000))}</g>" },
        { "a sheet whose last rule is left open", "<style>.a{fill:url(#p)</style><pattern id='p' width='1' height='1'><rect class='a' width='1' height='1'/></pattern><rect class='a' width='9' height='9'/>" },
        { "a sheet for whatever there is", "<style>rect{fill:url(#p)}</style><pattern id='p' width='1' height='1'><rect width='1' height='1'/></pattern><rect width='9' height='9'/>" },
        { "tenfold, ten times over", Dot + Fold(10, 10) },
        { "patterns of patterns", Patterns(12) },
    };

    [Theory]
    [MemberData(nameof(Bombs))]
    public void Drawing_that_multiplies_or_never_ends_is_refused_at_once(string what, string inside)
    {
        var watch = Stopwatch.StartNew();

        var (png, fault) = Logo.Read(Svg(inside));

        Assert.True(png is null, what);
        Assert.Equal("This SVG draws too much: shapes that are repeated within each other many times over, or without end. Simplify it and send that.", fault);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5), $"{what}: {watch.Elapsed}");
    }

    [Fact]
    public void Picture_of_nothing_but_white_is_refused() =>
        Assert.StartsWith("Nothing on this picture is darker than white", Logo.Read(Png.Of(new Dots(90, 30), 180)).Fault, StringComparison.Ordinal);

    [Theory]
    [InlineData("width='1e30' height='1e30'")]
    [InlineData("width='1e9' height='1e-9'")]
    [InlineData("viewBox='0 0 1e-30 1e30' width='10' height='10'")]
    public void Drawing_of_absurd_size_is_refused(string size) =>
        Assert.NotNull(Logo.Read(Encoding.UTF8.GetBytes($"<svg xmlns='http://www.w3.org/2000/svg' {size}>{Dot}</svg>")).Fault);

    public static TheoryData<string, string> Work => new()
    {
        { "as many shapes as are taken", string.Concat(Enumerable.Range(0, 4900).Select(n => $"<circle cx='{n % 20}' cy='5' r='4' stroke='#000' stroke-dasharray='.01 .01'/>")) },
        { "repeated as often as is taken", Dot + Fold(9, 3) },
        { "one endless line", $"<path stroke='#000' stroke-dasharray='.001' d='M0 0{string.Concat(Enumerable.Repeat("L20 10L0 0", 30_000))}'/>" },
        { "a sheet of many rules", $"<style>{string.Concat(Enumerable.Range(0, 1200).Select(n => $".a{n}{{fill:#000}}"))}</style>" + string.Concat(Enumerable.Range(0, 4900).Select(n => $"<rect class='a{n % 1200}' width='9' height='9'/>")) },
        { "a fine pattern", "<pattern id='p' width='.001' height='.001' patternUnits='userSpaceOnUse'><rect width='.0005' height='1'/></pattern><rect width='20' height='10' fill='url(#p)'/>" },
        { "masks on masks", Masks(6) },
    };

    [Theory]
    [MemberData(nameof(Work))]
    public void Whatever_is_taken_is_drawn_within_seconds_or_refused(string what, string inside)
    {
        var watch = Stopwatch.StartNew();

        var (png, fault) = Logo.Read(Svg(inside));

        Assert.True(png is null != fault is null);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(25), $"{what}: {watch.Elapsed}");
    }

    [Theory]
    [InlineData("<defs><path id='leaf' d='M0 0h4v4z'/></defs><use href='#leaf'/><use href='#leaf' x='5'/>")]
    [InlineData("<style>.cls-1{fill:url(#g)}.cls-2{clip-path:url(#c)}</style><linearGradient id='g' href='#s'/><linearGradient id='s'><stop stop-color='#000'/></linearGradient>"
        + "<clipPath id='c'><rect class='cls-3' width='8' height='8'/></clipPath><g class='cls-2'><rect class='cls-1' width='9' height='9'/></g>")]
    [InlineData("<g><g><g><g><g><g><g><g><g><g><circle cx='5' cy='5' r='4'/></g></g></g></g></g></g></g></g></g></g>")]
    public void Drawing_as_drawing_programs_write_it_is_taken(string inside) => Assert.Null(Logo.Read(Svg(inside)).Fault);

    private static string Fold(int times, int levels) => string.Concat(Enumerable.Range(1, levels).Select(level =>
        $"<g id='f{level}'>{string.Concat(Enumerable.Repeat($"<use href='#{(level == 1 ? "z" : $"f{level - 1}")}'/>", times))}</g>"));

    private static string Nested(int depth) =>
        string.Concat(Enumerable.Repeat("<g>", depth)) + Dot + string.Concat(Enumerable.Repeat("</g>", depth));

    private static string Patterns(int levels) => "<pattern id='p0' width='1' height='1'>" + Dot + "</pattern>" + string.Concat(Enumerable.Range(1, levels).Select(level =>
        $"<pattern id='p{level}' width='.1' height='.1'>{string.Concat(Enumerable.Repeat($"<rect width='9' height='9' fill='url(#p{level - 1})'/>", 8))}</pattern>")) + $"<rect width='9' height='9' fill='url(#p{levels})'/>";

    private static string Masks(int levels) => $"<mask id='m0'>{Dot}</mask>" + string.Concat(Enumerable.Range(1, levels).Select(level =>
        $"<mask id='m{level}'><rect mask='url(#m{level - 1})' width='9' height='9' fill='#fff'/></mask>")) + $"<rect mask='url(#m{levels})' width='9' height='9'/>";

    private static byte[] Svg(string inside) =>
        Encoding.UTF8.GetBytes($"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 20 10' width='20' height='10'>{inside}</svg>");
}
