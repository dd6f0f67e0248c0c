using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Money;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Money;

public sealed class ChargeModel(ChargeStore charges, PriceListStore prices, JobStore jobs, ShopStore shops, ShopClock clock) : RecordPage<ChargeStore.Sheet>
{
    [BindProperty]
    public ChargeInput Input { get; set; } = new();

    public ShopDetails Shop => shops.Get();

    public IReadOnlyList<ChargeStore.Change> Changes => charges.Changes(User.AtShop(), Id);

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    protected override ChargeStore.Sheet? Find(long id) => charges.Get(User.AtShop(), id);

    /// <param name="list">Filled in from the price list instead of what is charged now.</param>
    public void OnGet(bool list)
    {
        var known = prices.Get();
        Input = ChargeInput.Of(Saved.Version, list && jobs.Get(User.AtShop(), Id) is { } job ? known.Lines(job.Priced, null) : Typed, Shop, known.TaxBp);
    }

    /// <summary>All lines but what a prepaid restring took off, which is given back and not edited.</summary>
    private IEnumerable<ChargeLine> Typed => Saved.Lines.Where(line => line.Kind != ChargeKind.Prepaid);

    public IEnumerable<ChargeLine> Prepaid => Saved.Lines.Where(line => line.Kind == ChargeKind.Prepaid);

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        List<ChargeLine> lines = [.. Input.Lines.Select(Line).OfType<ChargeLine>(), .. Prepaid];
        if (!ModelState.IsValid || this.Asks(Saved.Oddities("Lines[0].Amount", lines.Count == 0 ? null : lines.Sum(line => line.AmountMinor)), Input.Confirmed))
            return Page();
        return this.After(charges.Save(User.AtShop(), Id, Input.Version, lines),
            _ => this.GoOn($"/shop/jobs/{Id}", $"The price of ticket {Saved.Ticket} is saved."), Saved.Version);
    }

    /// <summary>Null for a line left empty. A length with a price of a metre gives the amount.</summary>
    private ChargeLine? Line(ChargeLineInput typed, int index)
    {
        var place = $"Lines[{index}].";
        var metre = this.Minor(place + nameof(typed.MetrePrice), typed.MetrePrice, Shop);
        var line = new ChargeLine { Kind = typed.Kind, Words = typed.Words ?? "", TaxBp = typed.TaxBp };
        if (typed.Metres is { } metres && metre is { } each)
        {
            var centimetres = (int)Math.Round(metres * 100);
            return line with { Centimetres = centimetres, MetreMinor = each, AmountMinor = StringPrice.ByMetre(each, centimetres) };
        }
        return this.Minor(place + nameof(typed.Amount), typed.Amount, Shop, mayBeBelowZero: true) is { } amount ? line with { AmountMinor = amount } : null;
    }
}
