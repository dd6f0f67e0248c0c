using System.Globalization;

namespace TagPage.Core.Colour;

/// <summary>An opaque sRGB colour of eight bits a channel.</summary>
public readonly record struct Rgb(byte Red, byte Green, byte Blue)
{
    /// <summary>#000000.</summary>
    public static Rgb Black { get; } = new(0, 0, 0);

    /// <summary>#FFFFFF.</summary>
    public static Rgb White { get; } = new(255, 255, 255);

    /// <summary>Reads "#1E5B49" in either case: exactly seven characters.</summary>
    public static bool TryParse(string? text, out Rgb colour)
    {
        colour = default;
        if (text is not { Length: 7 } || text[0] != '#'
            || !uint.TryParse(text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var value))
        {
            return false;
        }
        colour = new Rgb((byte)(value >> 16), (byte)(value >> 8), (byte)value);
        return true;
    }

    /// <summary>Reads "#1E5B49".</summary>
    /// <exception cref="FormatException">The text is not such a colour.</exception>
    public static Rgb Parse(string text) =>
        TryParse(text, out var colour) ? colour : throw new FormatException("A colour is # and six hexadecimal digits.");

    /// <summary>"#1E5B49".</summary>
    public override string ToString() => $"#{Red:X2}{Green:X2}{Blue:X2}";
}
