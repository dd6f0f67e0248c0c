using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace TagPage.Browser.Tests;

/// <summary>
/// axe-core on the loaded page. It is handed over once, to be there on each page from then on, and called directly: Deque's
/// own call for Playwright hands it over three times a page and opens a second page to join the findings of frames, which
/// the pages here do not have; that took ten times as long as the look itself. All rules look at the page in light; in dark only those of colour look
/// again, because nothing but colours differs.
/// </summary>
internal static class Axe
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    private const string Look = """
        async isDark => {
          const runOnly = isDark
            ? { type: 'rule', values: ['color-contrast', 'link-in-text-block'] }
            : { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'] }
          const found = await axe.run(document, { runOnly, resultTypes: ['violations'] })
          return [found.passes.length, ...found.violations.map(v => `${v.id}: ${v.help} ${v.nodes.map(n => n.html).join(' | ')}`)].map(String)
        }
        """;

    /// <summary>In light and in dark, on the page as it was loaded.</summary>
    public static async Task HasNoAxeViolation(this IPage page)
    {
        Assert.Single(page.Frames);
        if (!await page.EvaluateAsync<bool>("() => 'axe' in window"))
        {
            await page.AddInitScriptAsync(Script);
            await page.EvaluateAsync(Script);
        }
        foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            var found = await page.EvaluateAsync<string[]>(Look, scheme == ColorScheme.Dark);
            Assert.NotEqual("0", found[0]);
            Assert.True(found.Length == 1, $"{page.Url} in {scheme}\n{string.Join('\n', found[1..])}");
        }
    }
}
