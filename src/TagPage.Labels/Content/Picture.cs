namespace TagPage.Labels.Content;

/// <summary>A picture in pure black and white.</summary>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
/// <param name="Dark">Row by row, true for black.</param>
public sealed record Picture(int Width, int Height, IReadOnlyList<bool> Dark)
{
    /// <summary>Whether the pixel nearest to a point is dark; the point is given as shares of width and height.</summary>
    internal bool IsDark(double across, double down) =>
        Dark[Math.Min(Height - 1, (int)(down * Height)) * Width + Math.Min(Width - 1, (int)(across * Width))];
}
