using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class NewModel(NewReminderStore store, ShopStore shops, ShopClock clock) : PageModel
{
    [BindProperty(SupportsGet = true, Name = "client")]
    public long ClientId { get; set; }

    [BindProperty]
    public NewReminderInput Input { get; set; } = new();

    public NewReminderStore.Household Household { get; private set; } = new();

    public bool IsTooSoon => store.IsTooSoon(Household);

    public bool IsQuiet => store.IsQuiet(Household);

    public DateOnly? RemindedOn => Household.RemindedAt is { } at ? clock.DayOf(at) : null;

    /// <summary>The mail as it would be, its links still to come.</summary>
    public ReminderMailWords Words => new(shops.Get(), Languages.OfOrEnglish(Household.Language), Household.Name,
        NamedRacket.Of(Household.Due.Select(d => (d.Racket.Player, d.Racket.Number, d.By))));

    public IActionResult OnGet()
    {
        if (!Load())
            return NotFound();
        Input = new NewReminderInput { FormKey = FormKey.New() };
        return Page();
    }

    public IActionResult OnPost()
    {
        if (!Load())
            return NotFound();
        return this.After(store.Add(Who.Shop, ClientId, Input.ToEntry()), id => Input.ByPhone
            ? Redirect($"/shop/nudges/answer/{id}")
            : this.GoOn($"/shop/nudges/{id}", "The reminder is made. It is not sent yet."));
    }

    private bool Load()
    {
        if (store.Get(ClientId) is not { } household)
            return false;
        Household = household;
        return true;
    }
}
