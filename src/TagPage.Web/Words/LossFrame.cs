namespace TagPage.Web.Words;

/// <summary>Where days and losses lie in the picture of a bed's tension, in units of its view box.</summary>
internal sealed class LossFrame
{
    public const double Width = 360, Height = 216, Left = 46, Right = 352, Top = 18, Bottom = 196;

    private const int ShortestDays = 14;

    private readonly DateOnly _strung;
    private readonly double _deepest;

    public LossFrame(LossPicture picture)
    {
        _strung = picture.Curve.Strung;
        var last = new[] { picture.Today, picture.Due ?? picture.Today, _strung.AddDays(ShortestDays) }.Max();
        LastDay = last.AddDays(Math.Max(2, (last.DayNumber - _strung.DayNumber) / 10));
        var deepest = picture.Readings.Select(r => r.Loss).Append(picture.Curve.Threshold).Append(picture.Curve.On(LastDay).High).Max();
        _deepest = Math.Clamp(Math.Ceiling(deepest / 10) * 10, 10, 100);
    }

    /// <summary>A little past today and the due day.</summary>
    public DateOnly LastDay { get; }

    /// <summary>Per cent of tension left at which the scale is marked, from 100 down.</summary>
    public IEnumerable<int> Marks
    {
        get
        {
            var step = _deepest > 50 ? 20 : 10;
            for (var lost = 0; lost <= _deepest; lost += step)
                yield return 100 - lost;
        }
    }

    /// <summary>From the left, kept within the frame.</summary>
    public double X(DateOnly day) =>
        Left + ((Right - Left) * Math.Clamp((day.DayNumber - _strung.DayNumber) / (double)(LastDay.DayNumber - _strung.DayNumber), 0, 1));

    /// <summary>From the top, kept within the frame: more loss lies lower.</summary>
    public double Y(double lossPercent) => Top + ((Bottom - Top) * Math.Clamp(lossPercent / _deepest, 0, 1));
}
