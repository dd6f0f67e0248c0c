namespace TagPage.Labels.Tests.Cast;

/// <summary>Sees a label as a phone does: turned, at a slant, out of focus, with noise. The same seed sees the same.</summary>
internal sealed record Camera(double Degrees, double Slant, double Blur, double Noise, int Seed)
{
    public Bitmap See(Bitmap label, double scale)
    {
        var (width, height) = ((int)(label.Width * scale * 1.3), (int)(label.Height * scale * 1.2 + label.Width * scale * 0.3));
        var gray = new double[width * height];
        var (sin, cos) = Math.SinCos(Degrees * Math.PI / 180);
        for (var i = 0; i < gray.Length; i++)
        {
            var (x, y) = ((i % width - width / 2.0) / scale, (i / width - height / 2.0) / scale);
            // A plane that tilts away: the farther across, the smaller.
            var depth = 1 + Slant * x / label.Width;
            var (u, v) = ((x * cos + y * sin) * depth + label.Width / 2.0, (-x * sin + y * cos) * depth + label.Height / 2.0);
            gray[i] = Sample(label, u, v);
        }
        return Noisy(Blurred(gray, width), width, height);
    }

    private static double Sample(Bitmap label, double x, double y)
    {
        var (left, top) = ((int)Math.Floor(x - 0.5), (int)Math.Floor(y - 0.5));
        var (right, down) = (x - 0.5 - left, y - 0.5 - top);
        return (At(left, top) * (1 - right) + At(left + 1, top) * right) * (1 - down)
            + (At(left, top + 1) * (1 - right) + At(left + 1, top + 1) * right) * down;

        double At(int column, int row) =>
            column < 0 || row < 0 || column >= label.Width || row >= label.Height ? 235 : label.Gray[row * label.Width + column];
    }

    private double[] Blurred(double[] gray, int width)
    {
        var reach = (int)Math.Ceiling(3 * Blur);
        var weights = Enumerable.Range(-reach, 2 * reach + 1).Select(d => Blur == 0 ? 1 : Math.Exp(-d * d / (2 * Blur * Blur))).ToArray();
        return Pass(Pass(gray, 1, width), width, gray.Length / width);

        double[] Pass(double[] from, int step, int length)
        {
            var to = new double[from.Length];
            for (var i = 0; i < from.Length; i++)
            {
                var at = i / step % length;
                var (sum, weight) = (0.0, 0.0);
                for (var d = Math.Max(-reach, -at); d <= Math.Min(reach, length - 1 - at); d++)
                    (sum, weight) = (sum + from[i + d * step] * weights[d + reach], weight + weights[d + reach]);
                to[i] = sum / weight;
            }
            return to;
        }
    }

    private Bitmap Noisy(double[] gray, int width, int height)
    {
        var random = new Random(Seed);
        return new Bitmap(width, height, [.. gray.Select(value => (byte)Math.Clamp(value + Noise * (random.NextDouble() + random.NextDouble() - 1) * 2, 0, 255))]);
    }
}
