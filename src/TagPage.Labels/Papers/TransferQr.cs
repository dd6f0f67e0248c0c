using System.Globalization;
using System.Text;
using QRCoder;
using TagPage.Labels.Render;

namespace TagPage.Labels.Papers;

/// <summary>
/// The square that a bank's app reads to fill in a transfer, as QRCoder writes it. In euros that of EPC069-12 of the European Payments
/// Council, version 2.1 (version 002 of the data: no BIC needed), level M and at most version 13, as it demands. For accounts in
/// Switzerland and Liechtenstein that of the Swiss QR-bill, which has the Swiss cross in its middle.
/// </summary>
public sealed class TransferQr
{
    /// <summary>What the guideline allows: 0.01 to 999,999,999.99 EUR, here in cents.</summary>
    public const long LeastCents = 1, MostCents = 99_999_999_999;

    private const int QuietZone = 4, LongestName = 70, LongestText = 140;

    private readonly QRCodeData _data;

    private TransferQr(string payload, QRCodeData data, bool isSwiss = false) => (Payload, _data, IsSwiss) = (payload, data, isSwiss);

    /// <summary>It has the Swiss cross over its middle, and is 46 mm on paper.</summary>
    public bool IsSwiss { get; }

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

    /// <summary>
    /// That of a Swiss QR-bill: level M, version 25 at most, character set UTF-8 (Implementation Guidelines QR-bill of SIX, version 2.3,
    /// sections 4 and 6; from memory).
    /// </summary>
    /// <param name="payee">Whose account it is.</param>
    /// <param name="currency">CHF or EUR.</param>
    /// <param name="cents">What to pay.</param>
    /// <param name="text">What it is for, as both will read it.</param>
    /// <param name="reference">27 digits for a QR-IBAN, which demands them; nothing to another account.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nobody can transfer that amount.</exception>
    public static TransferQr OfSwiss(SwissPayee payee, string currency, long cents, string text, string reference)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cents, LeastCents);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(cents, MostCents);
        var payload = SwissPayload.Of(payee, currency, cents, text, reference);
        return new TransferQr(payload, QRCodeGenerator.GenerateQrCode(payload, QRCodeGenerator.ECCLevel.M, forceUtf8: true), isSwiss: true);
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
            $"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {side} {side}" {(label.Length > 0 ? $"role=\"img\" aria-label=\"{label}\"" : "aria-hidden=\"true\"")} shape-rendering="crispEdges"><rect width="{side}" height="{side}" fill="#fff"/><path d="{path}" fill="#000"/>{string.Concat(Cross.Select(box => string.Create(CultureInfo.InvariantCulture, $"<rect x=\"{box.X + QuietZone:0.###}\" y=\"{box.Y + QuietZone:0.###}\" width=\"{box.Wide:0.###}\" height=\"{box.High:0.###}\" fill=\"{(box.IsDark ? "#000" : "#fff")}\"/>")))}</svg>""");
    }

    /// <summary>
    /// The Swiss cross in modules, one box over the other: 7 mm of 46 wide, black in a white edge, its arms 11 of 19.8 long and 3.3 wide
    /// (proportions of the drawing that SIX gives out; from memory). Nothing in other squares.
    /// </summary>
    internal IEnumerable<(double X, double Y, double Wide, double High, bool IsDark)> Cross
    {
        get
        {
            if (!IsSwiss)
                yield break;
            var unit = Modules * 7.0 / 46 / 19.8;
            yield return Box(19.8, 19.8, false);
            yield return Box(18.4, 18.4, true);
            yield return Box(11, 3.3, false);
            yield return Box(3.3, 11, false);

            (double, double, double, double, bool) Box(double wide, double high, bool isDark) =>
                ((Modules - wide * unit) / 2, (Modules - high * unit) / 2, wide * unit, high * unit, isDark);
        }
    }

    /// <summary>A PNG with the quiet zone, each module that many dots wide.</summary>
    public byte[] Png(int dots)
    {
        var side = Modules + 2 * QuietZone;
        var picture = new Dots(side * dots, side * dots);
        for (var y = 0; y < picture.Height; y++)
            for (var x = 0; x < picture.Width; x++)
                if (IsInk((x + 0.5) / dots - QuietZone, (y + 0.5) / dots - QuietZone))
                    picture.Ink(x, y);
        return Render.Png.Of(picture, 300);
    }

    private bool IsInk(double x, double y)
    {
        var dark = IsDark((int)Math.Floor(x), (int)Math.Floor(y));
        foreach (var box in Cross)
            if (x >= box.X && y >= box.Y && x < box.X + box.Wide && y < box.Y + box.High)
                dark = box.IsDark;
        return dark;
    }

    internal IEnumerable<(int Column, int Row, int Length)> Runs => QrRuns.Of(Modules, Modules, IsDark);
}
