namespace TagPage.Labels.Tests;

/// <summary>Pixels, one byte each, 0 for black to 255 for white, row by row.</summary>
internal sealed record Bitmap(int Width, int Height, byte[] Gray)
{
    public static Bitmap Of(int side, int scale, Func<int, int, bool> isDark)
    {
        var width = side * scale;
        var gray = new byte[width * width];
        for (var i = 0; i < gray.Length; i++)
            gray[i] = isDark(i % width / scale, i / width / scale) ? (byte)0 : (byte)255;
        return new Bitmap(width, width, gray);
    }
}
