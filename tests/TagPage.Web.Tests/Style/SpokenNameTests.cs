using System.Text.RegularExpressions;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Style;

/// <summary>
/// Whoever speaks to a page says what stands on the button: its spoken name holds the visible one (WCAG 2.2, 2.5.3). Checked on
/// the views, so that rows no demo shows are not forgotten.
/// </summary>
public sealed partial class SpokenNameTests
{
    [Fact]
    public void Every_spoken_name_holds_the_visible_one()
    {
        var named = Named().ToList();

        Assert.True(named.Count > 10, $"Only {named.Count} were found.");
        var wrong = named.Where(n => !n.Spoken.Contains(n.Visible, StringComparison.OrdinalIgnoreCase)).Select(n => $"{n.File}: “{n.Visible}” is spoken “{n.Spoken}”").ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Theory]
    [InlineData("<button aria-label=\"Tick off: @Model.Client\">Done</button>", "Done", "Tick off: @Model.Client")]
    [InlineData("<a class=\"b\" href=\"/x\" aria-label=\"@say.Remove: @(x.Fill((\"n\", y)))\">@say.Remove</a>", "@say.Remove", "@say.Remove: @(x.Fill((\"n\", y)))")]
    public void Names_are_read_out_of_a_view(string view, string visible, string spoken) => Assert.Equal((visible, spoken), Assert.Single(Read(view)));

    private static IEnumerable<(string File, string Visible, string Spoken)> Named() =>
        from file in Directory.EnumerateFiles(Path.Combine(Repository.Folder, "src", "TagPage.Web", "Pages"), "*.cshtml", SearchOption.AllDirectories)
        from name in Read(File.ReadAllText(file))
        select (Path.GetFileName(file), name.Visible, name.Spoken);

    private static IEnumerable<(string Visible, string Spoken)> Read(string view) =>
        Element().Matches(view).Select(m => (m.Groups["visible"].Value.Trim(), m.Groups["spoken"].Value));

    /// <summary>A link or button with a spoken name, whose expressions may hold quotes within their brackets.</summary>
    [GeneratedRegex("""<(?<tag>a|button)\b[^>]*?aria-label="(?<spoken>(?:[^"()]|\((?:[^()]|\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\))*\))*)"[^>]*>(?<visible>.*?)</\k<tag>>""")]
    private static partial Regex Element();
}
