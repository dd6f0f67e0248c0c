using System.Globalization;
using TagPage.Core.Customising;
using TagPage.Labels.Content;
using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Records.Labels;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Web.Http;
using TagPage.Web.Words;

namespace TagPage.Web.Labels;

/// <summary>Turns records into labels.</summary>
public sealed class LabelMaker(LabelSettingsStore settings, LogoStore logos, ShopStore shops, PublicAddress address)
{
    private const string Purpose = "Scan for this racket’s page";
    private const string BlankPurpose = "Racket tag";

    public LabelSettings Settings => settings.Get();

    /// <summary>A racket's label, or why there is none yet.</summary>
    public (LaidLabel? Label, string? Why) Make(LabelRow row, LabelEntry input)
    {
        if ((WhyNot(row, input.Purpose) ?? Settings.InkFault(input.TapeColour, input.InkColour)) is { } why)
            return (null, why);
        var content = Content(row, input) with { Logo = input.Logo ? LogoPicture() : null };
        return (Make(content, input), null);
    }

    /// <summary>Labels of lines or of a desk, which no record stands behind.</summary>
    public LaidLabel Make(LabelContent content, LabelEntry input)
    {
        var label = Layouter.Lay(content, StockOf(input));
        return TapeColours.IsClear(string.IsNullOrEmpty(input.TapeColour) ? Settings.TapeColour : input.TapeColour)
            ? label with { Warnings = [.. label.Warnings, "The frame shows through clear tape. Stick it on one plain colour, and try the square there."] }
            : label;
    }

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
        var stock = Settings.Stock(input);
        return input.Pages == LabelPages.Sheet ? Settings.OnSheet(stock) : stock;
    }

    private static string? WhyNot(LabelRow row, LabelPurpose purpose) => purpose switch
    {
        LabelPurpose.Done when row.Job is null => "This racket has not been strung here yet.",
        LabelPurpose.Return when row.Code is null => "This racket has no tag yet. Make one first.",
        LabelPurpose.Measures when row.Spec is null => "This racket has not been measured yet.",
        LabelPurpose.Waiting when row.Waiting is null => "No ticket of this racket is waiting.",
        _ => null,
    };

    private LabelContent Content(LabelRow row, LabelEntry input)
    {
        var tag = row.Code is { } code ? new LabelTag(code, address.Base, Purpose) { InWords = Settings.AddressInWords } : null;
        // What is typed counts at once, so that the preview shows what would be printed.
        var entered = row with { LabelName = input.AgreedName ?? "" };
        var line = input.OwnLine ?? "";
        return input.Purpose switch
        {
            LabelPurpose.Return => Purposes.Return(Settings.ReturnWords, tag!),
            LabelPurpose.Measures => Purposes.Measures(Measures(row, row.Spec!, line, input.Whose ? entered.WhoseName : ""), tag),
            LabelPurpose.Waiting => Purposes.Waiting(Waiting(row.Waiting!, input.Whose ? entered.WhoseWaits : ""), tag),
            _ => Purposes.Done(Done(row.Job!, line, input.Whose ? entered.Whose : "") with { NameLeads = Settings.NameLeads }, tag),
        };
    }

    private static DoneFacts Done(LabelRow.JobPart job, string line, string whose) => new()
    {
        Tension = Tension(job.MainsTension, job.CrossesTension),
        Unit = EnglishNames.Of(job.TensionUnit),
        Mains = String(job.MainsName, job.MainsGaugeMm),
        Crosses = IsHybrid(job) ? String(job.CrossesName, job.CrossesGaugeMm) : new StringFact("", ""),
        RestringBy = job.LabelDate is { } due ? Formats.Day(due) : "",
        Strung = Formats.Day(job.StrungOn),
        Reading = job is { Reading: { } reading, Instrument: not null } ? Formats.Number(reading) : "",
        Instrument = job.Instrument ?? "",
        OwnLine = line,
        Whose = whose,
    };

    private static WaitingFacts Waiting(LabelRow.WaitingPart job, string whose)
    {
        var (mains, crosses) = (String(job.MainsName, job.MainsGaugeMm), String(job.CrossesName, job.CrossesGaugeMm));
        return new()
        {
            Ticket = job.Ticket.ToString(CultureInfo.InvariantCulture),
            Promised = job.PromisedFor is { } day ? Formats.Day(day) : "",
            Work = job.Works.Count > 0 ? VisitWords.Of(job.Works) : "",
            Tension = job.Works.Count > 0 ? "" : $"{Tension(job.MainsTension, job.CrossesTension)} {EnglishNames.Of(job.TensionUnit)}",
            Mains = job.Works.Count > 0 ? new StringFact("", "") : mains,
            Crosses = job.Works.Count > 0 || mains == crosses ? new StringFact("", "") : crosses,
            Wish = string.Join(' ', job.Wish.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)),
            Whose = whose,
        };
    }

    private static string Tension(decimal mains, decimal crosses) =>
        mains == crosses ? Formats.Number(mains) : $"{Formats.Number(mains)} / {Formats.Number(crosses)}";

    private static bool IsHybrid(LabelRow.JobPart job) => (job.MainsName, job.MainsGaugeMm) != (job.CrossesName, job.CrossesGaugeMm);

    private static StringFact String(string name, decimal gaugeMm) => new(name, Languages.English.Gauge(gaugeMm));

    private MeasureFacts Measures(LabelRow row, SpecEntry spec, string line, string whose)
    {
        var words = new SpecWords(shops.Get().CustomisingValues, row.Sport);
        var figures = SpecFigures.Of(spec, words.Values);
        return new()
        {
            Racket = $"Racket {row.Number}",
            Weight = figures.MassG is { } mass ? words.Mass(mass.Value) : "",
            Balance = words.LabelBalance(figures),
            SwingWeight = spec.SwingWeight is { } swing ? Formats.Number(swing, 0) : "",
            Stiffness = spec.Stiffness is { } stiffness ? Formats.Number(stiffness) : "",
            Measured = string.Create(CultureInfo.InvariantCulture, $"{Formats.Day(spec.MeasuredOn)}, {(spec.Strung ? "strung" : "unstrung")}{(spec.Kind == SpecKind.Customised ? ", customised" : "")}"),
            OwnLine = line,
            Whose = whose,
        };
    }
}
