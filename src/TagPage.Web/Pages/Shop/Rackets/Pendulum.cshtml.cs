using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>
/// A stop-watch for a racket that swings like a pendulum. It works the swing weight out and saves nothing: what was typed
/// into the form of the spec comes along and goes back there.
/// </summary>
public sealed class PendulumModel(RacketStore rackets, SpecStore specs, ShopStore shops, ShopClock clock) : RecordPage<RacketStore.Row>
{
    /// <summary>The spec that is being changed; null for a new one.</summary>
    [BindProperty(SupportsGet = true)]
    public long? Spec { get; set; }

    [BindProperty]
    public SpecInput Input { get; set; } = new();

    [BindProperty]
    public SwingTimesInput Times { get; set; } = new();

    public SwingTimes? Timed { get; private set; }

    public Uncertain SwingWeight { get; private set; }

    /// <summary>What two scales say of the balance, where it was not typed.</summary>
    public string? TwoScales => Input.Balance is null && BalanceMm is { } mm ? $"From two scales: {Words.FromButt((double)mm / 10)}. Leave it empty" : null;

    /// <summary>Where the spec is typed.</summary>
    public string Back => Spec is { } spec ? $"/shop/rackets/spec/{Id}/{spec}" : $"/shop/rackets/spec/{Id}";

    private SpecWords Words => new(Values, Saved.Sport);

    private CustomisingValues Values => shops.Get().CustomisingValues;

    private decimal? LengthMm => Input.LengthMm ?? SpecEntry.Newest(specs.Of(Id), spec => spec.LengthMm) ?? Saved.LengthCm * 10;

    private decimal? BalanceMm => Input.BalanceMm ?? (Input.Balance is { } balance ? new Balance(balance, Input.BalanceUnit).Mm(LengthMm) : null);

    protected override RacketStore.Row? Find(long id) => rackets.Get(id);

    public void OnGet() => Input = Start();

    /// <summary>From the form of the spec, and from this page's own.</summary>
    public void OnPost()
    {
        this.ForgiveMissing(nameof(Input.Weight), nameof(Input.Balance), nameof(Input.PendulumAxis));
        if (Times.IsEmpty)
            return;
        this.Note(Faults().Where(fault => ModelState.GetFieldValidationState($"Input.{fault.Field}") != ModelValidationState.Invalid).ToList());
        if (ModelState.IsValid)
            WorkOut(Times.Timed!);
    }

    // What it weighed and where it balanced last, in the shop's units.
    private SpecInput Start()
    {
        var past = specs.Of(Id);
        var start = SpecInput.Start(past is [var newest, ..] ? newest : null, Saved.Sport, Values, clock.Today, null) with { PendulumAxis = 0 };
        var (grams, mm) = (SpecEntry.Newest(past, spec => spec.WeightG), SpecEntry.Newest(past, spec => spec.BalanceMm));
        return start with
        {
            Weight = grams is { } g ? Math.Round(new Weight(g, WeightUnit.G).In(start.WeightUnit), start.WeightUnit == WeightUnit.G ? 2 : 4) : null,
            Balance = mm is { } b && new Balance(b, BalanceUnit.Mm).In(start.BalanceUnit, LengthMm) is { } balance ? Math.Round(balance, start.BalanceUnit == BalanceUnit.Mm ? 1 : 4) : null,
            Length = start.Length is { } length ? Math.Round(new Distance(length, start.LengthUnit).In(Values.LengthUnit), 4) : null,
            LengthUnit = Values.LengthUnit,
        };
    }

    private IEnumerable<FieldFault> Faults()
    {
        if (Input.WeightG is not { } grams)
            yield return new(nameof(Input.Weight), "Enter the weight.");
        else if (SpecFaults.OfWeight(grams) is { } weight)
            yield return new(nameof(Input.Weight), weight);
        if (BalanceMm is not { } balance)
            yield return new(nameof(Input.Balance), "Enter the balance point; in points the length as well.");
        else if (SpecFaults.OfBalance(balance) is { } outside)
            yield return new(nameof(Input.Balance), outside);
        if (AxisFault() is { } fault)
            yield return new(nameof(Input.PendulumAxis), fault);
    }

    private string? AxisFault() => Input.PendulumAxisMm switch
    {
        null => "Enter where it hangs: the edge it rests on, from the butt.",
        < 0 or > 800 => SpecFaults.PendulumAxis,
        { } axis when axis > LengthMm => $"This frame is {Formats.Number(LengthMm!.Value)} mm long, so it cannot hang at {Formats.Number(axis)} mm. Measure from the butt.",
        { } axis when Math.Abs((axis - BalanceMm) ?? 100) < 20 => "It hangs at its balance point and cannot swing. Hang it at least 20 mm from there.",
        _ => null,
    };

    private void WorkOut(SwingTimes timed)
    {
        var swing = SpecFigures.Of(Swung(timed.PeriodS).ToEntry(Values), Values).SwingWeight!.Value;
        if (swing.Value is < 30 or > 500)
            ModelState.AddModelError($"Times.{Times.TimesField}", $"No racket swings like that: it would come to {SpecWords.Swing(swing.Value)}, and a swing weight is between 30 and 500. Count whole swings, there and back, and check where it hangs.");
        else
            (Timed, SwingWeight) = (timed, swing);
    }

    // As the spec will be kept, on a frame of the length that is known; times to the four decimals that the form gets.
    private SpecInput Swung(Uncertain periodS) => Input with
    {
        MeasuredOn = clock.Today,
        SwingWeight = null,
        Length = LengthMm,
        LengthUnit = LengthUnit.Mm,
        PendulumAxis = Input.PendulumAxisMm,
        PendulumPeriodS = Math.Round((decimal)periodS.Value, 4),
        PendulumOffS = Math.Round((decimal)periodS.Off, 4),
    };

    /// <summary>What this page does not ask for, as it was typed.</summary>
    public IReadOnlyList<(string Name, string Value)> Carried =>
    [
        Typed("FormKey", Input.FormKey), Typed("Version", Formats.Number(Input.Version)), Typed("MeasuredOn", Input.MeasuredOn is { } day ? DayField.Of(day) : ""),
        Typed("Kind", $"{Input.Kind}"), Typed("Length", Text(Input.Length)), Typed("LengthUnit", $"{Input.LengthUnit}"), Typed("TipWeight", Text(Input.TipWeight)),
        Typed("Stiffness", Text(Input.Stiffness)), Typed("StiffnessScale", Input.StiffnessScale ?? ""), Typed("Note", Input.Note ?? ""),
        ("Strung", Yes(Input.Strung)), ("GripOn", Yes(Input.GripOn)), ("DampenerOn", Yes(Input.DampenerOn)),
    ];

    public (string Name, string Value) Typed(string name, string otherwise) =>
        (name, ModelState.TryGetValue($"Input.{name}", out var entry) && entry.AttemptedValue is { } typed ? typed : otherwise);

    private static string Text(decimal? number) => number is { } known ? Formats.Number(known, 4) : "";

    private static string Yes(bool value) => value ? "true" : "false";
}
