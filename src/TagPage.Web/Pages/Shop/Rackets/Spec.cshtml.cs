using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class SpecModel(RacketStore rackets, SpecStore store, ShopStore shops, ShopClock clock) : RecordPage<RacketStore.Row>
{
    [BindProperty]
    public SpecInput Input { get; set; } = new();

    protected override RacketStore.Row? Find(long id) => rackets.Get(id);

    private CustomisingValues Values => shops.Get().CustomisingValues;

    /// <param name="axis">From the stop-watch: where it hung, in mm.</param>
    /// <param name="period">Seconds a swing took.</param>
    /// <param name="off">Its standard error.</param>
    /// <param name="grams">What the racket weighed there.</param>
    /// <param name="balanceMm">Where it balanced there.</param>
    public void OnGet(decimal? axis, decimal? period, decimal? off, decimal? grams, decimal? balanceMm)
    {
        var last = store.Of(Id) is [var newest, ..] ? newest : null;
        Input = new SpecInput
        {
            FormKey = FormKey.New(),
            MeasuredOn = clock.Today,
            Kind = last is null ? SpecKind.Received : SpecKind.Remeasured,
            Weight = grams,
            WeightUnit = grams is null ? Values.WeightUnit : WeightUnit.G,
            Balance = balanceMm,
            Length = last?.Length,
            LengthUnit = last is { Length: not null } ? last.LengthUnit : Values.LengthUnit,
            BalanceUnit = balanceMm is not null ? BalanceUnit.Mm : Saved.Sport == Core.Sports.Sport.Tennis || Values.BalanceUnit != BalanceUnit.Points ? Values.BalanceUnit : BalanceUnit.Mm,
            PendulumAxisMm = axis,
            PendulumPeriodS = period,
            PendulumOffS = off,
            StiffnessScale = store.Scales() is [var scale, ..] ? scale : null,
            Strung = last?.Strung ?? true,
            GripOn = last?.GripOn ?? true,
            DampenerOn = last?.DampenerOn ?? false,
        };
    }

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(SpecRules.Oddities(Saved.Sport, clock.Today, Input.ToEntry(Values)), Input.Confirmed))
            return Page();
        return this.After(store.Add(Who.Shop, Id, Input.ToEntry(Values)),
            _ => this.GoOn($"/shop/rackets/{Id}#specs", $"The spec of racket {Saved.Number} is saved."));
    }
}
