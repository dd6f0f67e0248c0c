using TagPage.Core.Strings;
using TagPage.Core.Units;

namespace TagPage.Web.Pages.Tag;

/// <summary>One stringing as everybody with the tag may see it.</summary>
public sealed record StringingRow
{
    public long JobId { get; init; }
    public DateOnly StrungOn { get; init; }
    public string Mains { get; init; } = "";
    public decimal MainsGaugeMm { get; init; }
    public decimal MainsTension { get; init; }
    public string Crosses { get; init; } = "";
    public decimal CrossesGaugeMm { get; init; }
    public decimal CrossesTension { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public int PreStretchPercent { get; init; }
    public int Pieces { get; init; }
    public decimal? Reading { get; init; }
    public ReadingScale? Scale { get; init; }

    /// <summary>How many stringings the racket has had in all, this list's rows and older ones.</summary>
    public int InAll { get; init; }

    public bool IsHybrid => Mains != Crosses || MainsGaugeMm != CrossesGaugeMm;

    public Tension MainsAt => new(MainsTension, TensionUnit);

    public Tension CrossesAt => new(CrossesTension, TensionUnit);
}
