using TagPage.Core.Jobs;
using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Core.Units;

namespace TagPage.Web.Words;

/// <summary>The trade's names in a client's or a stranger's language.</summary>
public static class TradeWords
{
    public static string Of(this Language language, Sport sport)
    {
        var words = language.Phrases.Trade;
        return sport switch
        {
            Sport.Tennis => words.Tennis,
            Sport.Badminton => words.Badminton,
            _ => words.Squash,
        };
    }

    public static string Of(this Language language, VisitWork work)
    {
        var words = language.Phrases.Trade;
        return work switch
        {
            VisitWork.Grip => words.WorkGrip,
            VisitWork.Grommets => words.WorkGrommets,
            VisitWork.Bumper => words.WorkBumper,
            VisitWork.Balance => words.WorkBalance,
            VisitWork.Check => words.WorkCheck,
            VisitWork.Measuring => words.WorkMeasuring,
            _ => words.WorkOther,
        };
    }

    public static string Of(this Language language, Material material)
    {
        var words = language.Phrases.Trade;
        return material switch
        {
            Material.NaturalGut => words.NaturalGut,
            Material.Multifilament => words.Multifilament,
            Material.SyntheticGut => words.SyntheticGut,
            Material.Polyester => words.Polyester,
            _ => words.Aramid,
        };
    }

    /// <summary>A usual colour by its name in this language; any other as the shop wrote it.</summary>
    public static string Colour(this Language language, string written)
    {
        var words = language.Phrases.Trade;
        return written.ToLowerInvariant() switch
        {
            "white" => words.White,
            "yellow" => words.Yellow,
            "orange" => words.Orange,
            "red" => words.Red,
            "pink" => words.Pink,
            "purple" => words.Purple,
            "blue" => words.Blue,
            "green" => words.Green,
            "silver" => words.Silver,
            "black" => words.Black,
            _ => written,
        };
    }

    /// <summary>Value and unit, at most two decimals: "24 lb", "11.2 kg".</summary>
    public static string Of(this Language language, Tension tension) =>
        $"{language.Number(tension.Value)} {(tension.Unit == TensionUnit.Lb ? "lb" : "kg")}";

    /// <summary>"52 / 50 lb": mains before crosses.</summary>
    public static string Tensions(this Language language, decimal mains, decimal crosses, TensionUnit unit) =>
        mains == crosses ? language.Of(new Tension(mains, unit)) : $"{language.Number(mains)} / {language.Of(new Tension(crosses, unit))}";

    /// <summary>A string as it is asked for: Heron Spin 1.25.</summary>
    public static string StringName(this Language language, string name, decimal gaugeMm) => $"{name} {language.Gauge(gaugeMm)}";

    /// <summary>A string's diameter, two decimals at least.</summary>
    public static string Gauge(this Language language, decimal mm) => mm.ToString("0.00#", language.Culture);
}
