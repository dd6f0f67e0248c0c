using TagPage.Core.Strings;
using TagPage.Core.Units;

namespace TagPage.Records.Tags;

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
    public int MainsPreStretch { get; init; }
    public int CrossesPreStretch { get; init; }
    public int Pieces { get; init; }
    public decimal? Reading { get; init; }
    public ReadingScale? Scale { get; init; }

    /// <summary>How many stringings the racket has had in all, this list's rows and older ones.</summary>
    public int InAll { get; init; }

    /// <summary>For a SELECT from <c>job j</c> with <see cref="Joins"/>.</summary>
    internal const string Columns = """
        j.id AS job_id, j.strung_on, j.mains_tension, j.crosses_tension, j.tension_unit, j.mains_pre_stretch, j.crosses_pre_stretch, j.pieces,
        m.name AS mains, m.gauge_mm AS mains_gauge_mm, x.name AS crosses, x.gauge_mm AS crosses_gauge_mm,
        d.value AS reading, i.scale, COUNT(*) OVER () AS in_all
        """;

    internal const string Joins = """
        JOIN string_kind m ON m.id = j.mains_id
        JOIN string_kind x ON x.id = j.crosses_id
        LEFT JOIN reading d ON d.job_id = j.id AND d.first = 1
        LEFT JOIN instrument i ON i.id = d.instrument_id
        """;

    public bool IsHybrid => Mains != Crosses || MainsGaugeMm != CrossesGaugeMm;

    public Tension MainsAt => new(MainsTension, TensionUnit);

    public Tension CrossesAt => new(CrossesTension, TensionUnit);
}
