using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class SpecModel(RacketStore rackets, SpecStore store, ShopClock clock) : RecordPage<RacketStore.Row>
{
    [BindProperty]
    public SpecInput Input { get; set; } = new();

    protected override RacketStore.Row? Find(long id) => rackets.Get(id);

    public void OnGet() => Input = new SpecInput
    {
        FormKey = FormKey.New(),
        MeasuredOn = clock.Today,
        StiffnessScale = store.Scales() is [var last, ..] ? last : null,
        Strung = true,
        GripOn = true,
    };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(SpecRules.Oddities(Saved.Sport, clock.Today, Input.ToEntry()), Input.Confirmed))
            return Page();
        return this.After(store.Add(Who.Shop, Id, Input.ToEntry()),
            _ => this.GoOn($"/shop/rackets/{Id}#specs", $"The spec of racket {Saved.Number} is saved."));
    }
}
