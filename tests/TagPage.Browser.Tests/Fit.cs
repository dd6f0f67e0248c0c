using Microsoft.Playwright;

namespace TagPage.Browser.Tests;

/// <summary>Measures a page as it is laid out.</summary>
internal static class Fit
{
    /// <summary>
    /// What sticks out, and each word that stands on two lines. Addresses and codes may be broken anywhere, and so may a word
    /// that is longer than its line.
    /// </summary>
    private const string Look = """
        () => {
          const found = []
          if (document.documentElement.scrollWidth > innerWidth) {
            const out = [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > innerWidth + 1)
            found.push(`scrolls sideways: ${out.slice(-2).map(e => e.outerHTML.slice(0, 120)).join(' | ')}`)
          }
          const partsOf = (text, from, to) => {
            const range = document.createRange()
            range.setStart(text, from)
            range.setEnd(text, to)
            return [...range.getClientRects()].filter(part => part.width > 0)
          }
          const linesOf = parts => new Set(parts.map(part => Math.round(part.top)))
          const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
          while (texts.nextNode()) {
            const text = texts.currentNode
            if (text.parentElement.closest('pre, code, svg, textarea, select, script, style') || linesOf(partsOf(text, 0, text.length)).size < 2) continue
            for (const word of text.data.matchAll(/(?:(?:\S*@|\S*:\/\/)\S+)|[^\s‐–/-]+/g)) {
              if (!/^[\p{Script=Latin}\p{N}\p{M}’',.;:!?()“”„…%€-]+$/u.test(word[0]) || /\w[.:]\w/.test(word[0])) continue
              const parts = partsOf(text, word.index, word.index + word[0].length)
              if (linesOf(parts).size < 2) continue
              let box = text.parentElement
              while (getComputedStyle(box).display.startsWith('inline')) box = box.parentElement
              const style = getComputedStyle(box)
              const room = box.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight)
              if (parts.reduce((sum, part) => sum + part.width, 0) <= room) found.push(`breaks “${word[0]}”: ${box.outerHTML.slice(0, 120)}`)
            }
          }
          return found
        }
        """;

    public static async Task FitsAndBreaksNoWord(this IPage page, string how)
    {
        var found = await page.EvaluateAsync<string[]>(Look);
        Assert.True(found.Length == 0, $"{page.Url} {how}\n{string.Join('\n', found)}");
    }
}
