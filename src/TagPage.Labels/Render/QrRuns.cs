namespace TagPage.Labels.Render;

/// <summary>The dark modules of a symbol, row by row, as stretches.</summary>
internal static class QrRuns
{
    public static IEnumerable<(int Column, int Row, int Length)> Of(TagQr qr) => Of(qr.Modules, qr.Modules, qr.IsDark);

    public static IEnumerable<(int Column, int Row, int Length)> Of(int width, int height, Func<int, int, bool> isDark)
    {
        for (var row = 0; row < height; row++)
        {
            for (var column = 0; column < width; column++)
            {
                var start = column;
                while (column < width && isDark(column, row))
                    column++;
                if (column > start)
                    yield return (start, row, column - start);
            }
        }
    }
}
