namespace TagPage.Labels.Render;

/// <summary>Printer dots, one bool each, row by row; true is ink.</summary>
public sealed class Dots(int width, int height)
{
    private readonly bool[] _ink = new bool[width * height];

    /// <summary>Dots a row.</summary>
    public int Width => width;

    /// <summary>Rows.</summary>
    public int Height => height;

    /// <summary>Whether a dot is inked.</summary>
    public bool this[int x, int y] => _ink[y * width + x];

    /// <summary>Inks one dot; outside the field it does nothing.</summary>
    internal void Ink(int x, int y)
    {
        if (x >= 0 && y >= 0 && x < width && y < height)
            _ink[y * width + x] = true;
    }

    internal void Ink(int x, int y, int wide, int high)
    {
        for (var row = y; row < y + high; row++)
        {
            for (var column = x; column < x + wide; column++)
                Ink(column, row);
        }
    }
}
