using System.Text;

namespace TagPage.Labels.Text;

internal static class Direction
{
    /// <summary>True for Hebrew and Arabic, false for other letters and for digits, null for what goes either way.</summary>
    public static bool? Of(string element)
    {
        var rune = element.EnumerateRunes().First();
        return rune.Value switch
        {
            >= 0x0660 and <= 0x0669 or >= 0x06F0 and <= 0x06F9 => false,
            >= 0x0590 and <= 0x08FF or >= 0xFB1D and <= 0xFDFF or >= 0xFE70 and <= 0xFEFC => true,
            _ => Rune.IsLetterOrDigit(rune) ? false : null,
        };
    }
}
