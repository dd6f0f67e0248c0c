using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Customising;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class SpecModel(RacketStore rackets, SpecStore store, ShopStore shops, ShopClock clock) : RecordPage<RacketStore.Row>
{
    [BindProperty]
    public SpecInput Input { get; set; } = new();

    protected override RacketStore.Row? Find(long id) => rackets.Get(id);

    private CustomisingValues Values => shops.Get().CustomisingValues;

    public void OnGet()
    {
        var (last, scale) = (store.Of(Id) is [var newest, ..] ? newest : null, store.Scales() is [var used, ..] ? used : null);
        Input = SpecInput.Start(last, Saved.Sport, Values, clock.Today, scale);
    }

    /// <summary>Back from the stop-watch, with all that was typed before.</summary>
    public PageResult OnPostTyped()
    {
        this.ForgiveMissing(null);
        return Page();
    }

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(SpecRules.Oddities(Saved.Sport, clock.Today, Input.ToEntry(Values)), Input.Confirmed))
            return Page();
        return this.After(store.Add(User.AtShop(), Id, Input.ToEntry(Values)),
            _ => this.GoOn($"/shop/rackets/{Id}#specs", $"The spec of racket {Saved.Number} is saved."));
    }
}
