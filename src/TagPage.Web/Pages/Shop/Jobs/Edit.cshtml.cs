using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Frames;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Stock;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class EditModel(EditJobStore store, JobStore jobs, FrameStore frames, RangeConfirmStore confirms, JobChoicesReader choices, UsualStore usual, ReadingStore readings, ChargeStore charges, PriceListStore prices, StockStore stock, ShopStore shops, ShopClock clock) : RecordPage<JobRow>
{
    [BindProperty]
    public EditInput Input { get; set; } = new();

    private FrameStore.Row? Frame => frames.Find(Saved.Sport, Saved.Frame);

    // What stands on the ticket and was confirmed there is not asked about again.
    private bool IsConfirmed(JobOrder order) => (order.MainsTension, order.CrossesTension ?? order.MainsTension) == (Saved.Mains, Saved.Crosses)
        && Frame is { } frame && confirms.Of(Id).Any(confirmed => RangeConfirmStore.Says(confirmed, Saved, frame.Range));

    public JobChoices Choices => choices.OfTicket(Saved);

    protected override JobRow? Find(long id) => jobs.Get(User.AtShop(), id);

    public void OnGet() => Input = JobFill.Edit(Saved, shops.Get());

    public IActionResult OnPost()
    {
        var order = Input.ToOrder();
        this.Note([
            .. order.Faults(Saved.Sport, shops.Get()),
            .. ReadingRules.Faults(Input.Reading, Input.InstrumentId),
            .. Input.ToDays().Faults(clock.Today)]);
        if (!ModelState.IsValid || this.Asks(
        [
            .. order.Oddities(Saved.Sport, Saved, Frame).Where(odd => odd is not TensionOutOfRange || !IsConfirmed(order)),
            .. order.Brought(Saved, stock.Sold()),
            .. Input.ToDays().Oddities(shops.Get().Opening, Saved.PromisedFor),
            .. store.Oddities(Saved, Input.StrungOn),
            .. charges.Get(User.AtShop(), Id)!.Oddities(nameof(Input.Price), Input.Price is { } price ? Currencies.ToMinor(price, shops.Get().Currency) : null),
            .. FirstReading.Oddities(usual, Saved, Input.Reading, Input.InstrumentId, readings.Of(Id)),
        ], Input.Confirmed))
            return Page();
        return this.After(store.Change(User.AtShop(), Id, Input.ToEntry()),
            _ => Done(jobs.Get(User.AtShop(), Id)!), Saved.Version);
    }

    /// <summary>A price follows no change of the strings by itself. What the price list makes of it is said, with the way there.</summary>
    private IActionResult Done(JobRow now)
    {
        var (page, said) = ($"/shop/jobs/{Id}", $"Ticket {Saved.Ticket} is saved.");
        var more = prices.Get().StringsMinor(now.Priced) - prices.Get().StringsMinor(Saved.Priced);
        return more == 0 || now.PriceMinor != Saved.PriceMinor ? this.GoOn(page, said)
            : this.GoOn(page, $"{said} {PriceWords.OfStrings(now.PriceMinor, more, shops.Get())}", "Fill in the price from the price list", $"/shop/money/charge/{Id}?list=true");
    }
}
