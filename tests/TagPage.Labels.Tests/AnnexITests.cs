using QRCoder;

namespace TagPage.Labels.Tests;

/// <summary>The encoder that draws our symbols against the worked example of ISO/IEC 18004, annex I: 01234567 at 1-M.</summary>
public class AnnexITests
{
    private const int Side = 21, Quiet = 4;

    [Fact]
    public void The_words_of_01234567_at_version_1_M_are_those_of_the_standards_annex_I()
    {
        byte[] data = [0x10, 0x20, 0x0C, 0x56, 0x61, 0x80, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11];
        byte[] errorCorrection = [0xA5, 0x24, 0xD4, 0xC1, 0xED, 0x36, 0xC7, 0x87, 0x2C, 0x55];
        var symbol = QRCodeGenerator.GenerateQrCode("01234567", QRCodeGenerator.ECCLevel.M, requestedVersion: 1).ModuleMatrix;
        Assert.Equal([.. data, .. errorCorrection], Words((column, row) => symbol[row + Quiet][column + Quiet]));
    }

    // The order in which words stand in a symbol of version 1, by the standard's 7.7.3: from the lower right, two columns
    // at a time, up and down, past finders, timing and format.
    private static List<byte> Words(Func<int, int, bool> isDark)
    {
        var mask = Mask(isDark);
        var bits = new List<bool>();
        var goesUp = true;
        for (var right = Side - 1; right > 0; right -= 2, goesUp = !goesUp)
        {
            if (right == 6)
                right--;
            for (var step = 0; step < Side; step++)
            {
                var row = goesUp ? Side - 1 - step : step;
                foreach (var column in (int[])[right, right - 1])
                {
                    if (!IsFunction(column, row))
                        bits.Add(isDark(column, row) ^ IsMasked(mask, row, column));
                }
            }
        }
        return [.. bits.Chunk(8).Select(word => (byte)word.Aggregate(0, (sum, bit) => sum << 1 | (bit ? 1 : 0)))];
    }

    private static bool IsFunction(int column, int row) =>
        column == 6 || row == 6 || (column < 9 && row < 9) || (column < 9 && row >= Side - 8) || (column >= Side - 8 && row < 9);

    // Format bits 12 to 10, masked with 101 (the standard's 7.9), beside the upper left finder.
    private static int Mask(Func<int, int, bool> isDark) =>
        ((isDark(2, 8) ? 4 : 0) | (isDark(3, 8) ? 2 : 0) | (isDark(4, 8) ? 1 : 0)) ^ 0b101;

    private static bool IsMasked(int mask, int i, int j) => mask switch
    {
        0 => (i + j) % 2 == 0,
        1 => i % 2 == 0,
        2 => j % 3 == 0,
        3 => (i + j) % 3 == 0,
        4 => (i / 2 + j / 3) % 2 == 0,
        5 => i * j % 2 + i * j % 3 == 0,
        6 => (i * j % 2 + i * j % 3) % 2 == 0,
        _ => ((i + j) % 2 + i * j % 3) % 2 == 0,
    };
}
