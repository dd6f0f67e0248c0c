using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.WebUtilities;
using TagPage.Core.Customising;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>A stop-watch for a racket that swings like a pendulum. It works the swing weight out and saves nothing.</summary>
public sealed class PendulumModel(RacketStore rackets, SpecStore specs, ShopStore shops) : RecordPage<RacketStore.Row>
{
    [BindProperty(SupportsGet = true)]
    public PendulumInput Input { get; set; } = new();

    public SwingTimes? Timed { get; private set; }

    public Uncertain SwingWeight { get; private set; }

    protected override RacketStore.Row? Find(long id) => rackets.Get(id);

    public void OnGet()
    {
        if (Input.IsEmpty)
            Input = Input with { WeightG = Input.WeightG ?? Last(s => s.WeightG, 1), BalanceMm = Input.BalanceMm ?? Last(s => s.BalanceMm, 1), AxisMm = Input.AxisMm ?? 0 };
        else if (ModelState.IsValid && LengthMm is { } length && Input.AxisMm > length)
            ModelState.AddModelError("Input.AxisMm", $"This frame is {Formats.Number(length)} mm long, so it cannot hang at {Formats.Number(Input.AxisMm.Value)} mm. Measure from the butt.");
        else if (ModelState.IsValid)
            WorkOut(Input.Timed!);
    }

    private decimal? LengthMm => Last(s => s.LengthMm, 1) ?? Saved.LengthCm * 10;

    private void WorkOut(SwingTimes timed)
    {
        var values = shops.Get().CustomisingValues;
        var (mass, balance, axis) = ((double)Input.WeightG!.Value, (double)Input.BalanceMm!.Value / 10, (double)Input.AxisMm!.Value / 10);
        var swing = Measured.PendulumSwingWeight(
            values.Tolerances.Mass(mass), values.Tolerances.Length(balance), values.Tolerances.Length(axis), timed.PeriodS, values.Gravity);
        if (swing.Value is < 30 or > 500)
            ModelState.AddModelError($"Input.{Input.TimesField}", $"No racket swings like that: it would come to {SpecWords.Swing(swing.Value)}, and a swing weight lies between 30 and 500. Count whole swings, there and back, and check where it hangs.");
        else
            (Timed, SwingWeight) = (timed, swing);
    }

    private decimal? Last(Func<SpecStore.Row, decimal?> figure, int decimals) =>
        specs.Of(Id).Select(figure).FirstOrDefault(value => value is not null) is { } last ? Math.Round(last, decimals) : null;

    /// <summary>The form that keeps it, filled with what was timed.</summary>
    public string Keep => QueryHelpers.AddQueryString($"/shop/rackets/spec/{Id}", new Dictionary<string, string?>
    {
        ["grams"] = Formats.Number(Input.WeightG!.Value),
        ["balanceMm"] = Formats.Number(Input.BalanceMm!.Value),
        ["axis"] = Formats.Number(Input.AxisMm!.Value),
        ["period"] = SpecWords.Number(Timed!.PeriodS.Value, 4),
        ["off"] = SpecWords.Number(Timed.PeriodS.Off, 4),
    });
}
