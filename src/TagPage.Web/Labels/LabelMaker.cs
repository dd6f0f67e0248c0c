using System.Globalization;
using TagPage.Labels.Content;
using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Records.Labels;
using TagPage.Web.Http;
using TagPage.Web.Words;
using SpecPart = TagPage.Records.Labels.LabelRow.SpecPart;

namespace TagPage.Web.Labels;

/// <summary>Turns records into labels.</summary>
public sealed class LabelMaker(LabelSettingsStore settings, LogoStore logos, PublicAddress address)
{
    private const string Purpose = "Scan for this racket’s page";
    private const string BlankPurpose = "Racket tag";

    public LabelSettings Settings => settings.Get();

    /// <summary>A racket's label, or why there is none yet.</summary>
    public (LaidLabel? Label, string? Why) Make(LabelRow row, LabelEntry input)
    {
        if (WhyNot(row, input.Purpose) is { } why)
            return (null, why);
        var content = Content(row, input) with { Logo = input.Logo ? LogoPicture() : null };
        return (Layouter.Lay(content, StockOf(input)), null);
    }

    /// <summary>Labels of lines or of a desk, which no record stands behind.</summary>
    public LaidLabel Make(LabelContent content, string? tapeColour, string? inkColour, LabelPages pages) =>
        Layouter.Lay(content, StockOf(new LabelEntry { TapeColour = tapeColour, InkColour = inkColour, Pages = pages }));

    /// <summary>A tag that belongs to no racket yet.</summary>
    public LaidLabel Blank(Core.Tags.TagCode code, LabelStock stock) =>
        Layouter.Lay(Purposes.Blank(new LabelTag(code, address.Base, BlankPurpose)), stock);

    /// <summary>Pages as asked for, each label so often.</summary>
    public IEnumerable<PrintPage> Pages(IEnumerable<LaidLabel> labels, LabelPages how, int copies = 1, int firstFree = 1) =>
        Pages(labels.SelectMany(label => Enumerable.Repeat(label, copies)), how, Settings.Sheet(), firstFree);

    /// <summary>The same on sheets of another plan than today's.</summary>
    public static IEnumerable<PrintPage> Pages(IEnumerable<LaidLabel> labels, LabelPages how, SheetPlan sheet, int firstFree = 1) => how switch
    {
        LabelPages.Strip => TagPage.Labels.Printing.Pages.Strip(labels),
        LabelPages.Sheet => sheet.Pages(labels, Math.Min(firstFree, sheet.Places)),
        _ => TagPage.Labels.Printing.Pages.OneEach(labels),
    };

    private Picture? LogoPicture() => logos.Get() is { } logo ? Logo.ToPicture(logo.Png, logo.Threshold) : null;

    private LabelStock StockOf(LabelEntry input)
    {
        var stock = Settings.Stock(input.TapeColour, input.InkColour, input.Fold);
        return input.Pages == LabelPages.Sheet ? Settings.OnSheet(stock) : stock;
    }

    private static string? WhyNot(LabelRow row, LabelPurpose purpose) => purpose switch
    {
        LabelPurpose.Done when row.Job is null => "This racket has not been strung here yet.",
        LabelPurpose.Return when row.Code is null => "This racket has no tag yet. Make one first.",
        LabelPurpose.Measures when row.Spec is null => "This racket has not been measured yet.",
        _ => null,
    };

    private LabelContent Content(LabelRow row, LabelEntry input)
    {
        var tag = row.Code is { } code ? new LabelTag(code, address.Base, Purpose) : null;
        var (whose, line) = (input.Whose ? Whose(row, input) : "", input.OwnLine ?? "");
        return input.Purpose switch
        {
            LabelPurpose.Return => Purposes.Return(Settings.ReturnWords, tag!),
            LabelPurpose.Measures => Purposes.Measures(Measures(row.Spec!, row.Number, line, whose), tag),
            _ => Purposes.Done(Done(row.Job!, line, whose), tag),
        };
    }

    // What is typed counts at once, so that the preview shows what would be printed.
    private static string Whose(LabelRow row, LabelEntry input) => (row with { LabelName = input.AgreedName ?? "" }).Whose;

    private static DoneFacts Done(LabelRow.JobPart job, string line, string whose) => new()
    {
        Tension = Tension(job.MainsTension, job.CrossesTension, EnglishNames.Of(job.TensionUnit)),
        Strings = Strings(job),
        RestringBy = job.LabelDate is { } due ? Formats.Day(due) : "",
        Strung = Formats.Day(job.StrungOn),
        Reading = job is { Reading: { } reading, Instrument: { } instrument } ? $"{Formats.Number(reading)} on {instrument}" : "",
        OwnLine = line,
        Whose = whose,
    };

    public static string Tension(decimal mains, decimal crosses, string unit) => mains == crosses
        ? $"{Formats.Number(mains)} {unit}"
        : $"{Formats.Number(mains)} / {Formats.Number(crosses)} {unit}";

    private static string Strings(LabelRow.JobPart job)
    {
        var (mains, crosses) = (Formats.StringName(job.MainsName, job.MainsGaugeMm), Formats.StringName(job.CrossesName, job.CrossesGaugeMm));
        return mains == crosses ? mains : $"{mains} / {crosses}";
    }

    private static MeasureFacts Measures(SpecPart spec, int number, string line, string whose) => new()
    {
        Racket = $"Racket {number}",
        Weight = With(spec.WeightG, "g"),
        Balance = spec.BalanceMm is { } balance ? $"balance {Formats.Number(balance / 10)} cm" : "",
        SwingWeight = spec.SwingWeight is { } swing ? $"swing weight {Formats.Number(swing, 0)}" : "",
        Stiffness = spec.Stiffness is { } stiffness ? string.Join(' ', "stiffness", Formats.Number(stiffness), spec.StiffnessScale).TrimEnd() : "",
        Measured = string.Create(CultureInfo.InvariantCulture, $"{Formats.Day(spec.MeasuredOn)}, {(spec.Strung ? "strung" : "unstrung")}"),
        OwnLine = line,
        Whose = whose,
    };

    private static string With(decimal? value, string unit) => value is { } known ? $"{Formats.Number(known)} {unit}" : "";
}
