using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class SpecEditModel(RacketStore rackets, SpecStore store, ShopStore shops, ShopClock clock) : RecordPage<SpecStore.Row>
{
    [BindProperty(SupportsGet = true), FromRoute(Name = "racket")]
    public long RacketId { get; set; }

    [BindProperty]
    public SpecInput Input { get; set; } = new();

    public RacketStore.Row Racket => rackets.Get(RacketId)!;

    protected override SpecStore.Row? Find(long id) => store.Get(RacketId, id);

    public void OnGet() => Input = SpecInput.Of(Saved);

    /// <summary>Back from the stop-watch, with all that was typed before.</summary>
    public PageResult OnPostTyped()
    {
        this.ForgiveMissing(null);
        return Page();
    }

    public IActionResult OnPost()
    {
        var values = shops.Get().CustomisingValues;
        if (!ModelState.IsValid || this.Asks(SpecRules.Oddities(Racket.Sport, clock.Today, Input.ToEntry(values)), Input.Confirmed))
            return Page();
        return this.After(store.Change(User.AtShop(), RacketId, Id, Input.ToEntry(values).After(Saved)),
            _ => this.GoOn($"/shop/rackets/{RacketId}#specs", "The spec is saved."), Saved.Version);
    }
}
