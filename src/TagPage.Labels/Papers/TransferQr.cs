using System.Globalization;
using System.Text;
using QRCoder;
using TagPage.Labels.Render;

namespace TagPage.Labels.Papers;

/// <summary>
/// The square that a bank's app reads to fill in a SEPA credit transfer in euros: EPC069-12 of the European Payments Council,
/// version 2.1 (version 002 of the data: no BIC needed), as QRCoder writes it. Level M and at most version 13, as it demands.
/// </summary>
public sealed class TransferQr
{
    /// <summary>What the guideline allows: 0.01 to 999,999,999.99 EUR, here in cents.</summary>
    public const long LeastCents = 1, MostCents = 99_999_999_999;

    private const int QuietZone = 4, LongestName = 70, LongestText = 140;

    private readonly QRCodeData _data;

    private TransferQr(string payload, QRCodeData data) => (Payload, _data) = (payload, data);

    /// <summary>The twelve lines that the square holds.</summary>
    public string Payload { get; }

    public int Version => _data.Version;

    public int Modules => _data.ModuleMatrix.Count - 2 * QuietZone;

    /// <param name="iban">In capitals, without spaces.</param>
    /// <param name="name">Whose account it is; cut where it is too long.</param>
    /// <param name="cents">What to pay.</param>
    /// <param name="text">What it is for, as both will read it.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nobody can transfer that amount.</exception>
    public static TransferQr Of(string iban, string name, long cents, string text)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cents, LeastCents);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(cents, MostCents);
        var payload = new PayloadGenerator.Girocode(iban, "", Cut(name, LongestName), cents / 100m, Cut(text, LongestText),
            version: PayloadGenerator.Girocode.GirocodeVersion.Version2, encoding: PayloadGenerator.Girocode.GirocodeEncoding.UTF_8).ToString();
        return new TransferQr(payload, QRCodeGenerator.GenerateQrCode(payload, QRCodeGenerator.ECCLevel.M, forceUtf8: true));
    }

    // A line break in what was typed would become a field of its own.
    private static string Cut(string text, int most)
    {
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= most ? line : line[..most].TrimEnd();
    }

    /// <summary>Whether a module is dark; false all around the symbol.</summary>
    public bool IsDark(int column, int row) =>
        column >= 0 && row >= 0 && column < Modules && row < Modules && _data.ModuleMatrix[row + QuietZone][column + QuietZone];

    /// <summary>One svg element with the quiet zone and a light ground.</summary>
    /// <param name="label">What a screen reader says; it holds no markup. Empty where the element around it says so.</param>
    public string Svg(string label = "")
    {
        var (side, path) = (Modules + 2 * QuietZone, new StringBuilder());
        foreach (var (column, row, length) in Runs)
            path.Append(CultureInfo.InvariantCulture, $"M{column + QuietZone} {row + QuietZone}h{length}v1h-{length}z");
        return string.Create(CultureInfo.InvariantCulture,
            $"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {side} {side}" {(label.Length > 0 ? $"role=\"img\" aria-label=\"{label}\"" : "aria-hidden=\"true\"")} shape-rendering="crispEdges"><rect width="{side}" height="{side}" fill="#fff"/><path d="{path}" fill="#000"/></svg>""");
    }

    internal IEnumerable<(int Column, int Row, int Length)> Runs => QrRuns.Of(Modules, Modules, IsDark);
}
