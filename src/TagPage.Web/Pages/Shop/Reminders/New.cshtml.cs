using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class NewModel(NewReminderStore store, ShopStore shops, ShopClock clock) : RecordPage<NewReminderStore.Household>
{
    [BindProperty(SupportsGet = true, Name = "client")]
    public long ClientId { get; set; }

    [BindProperty]
    public NewReminderInput Input { get; set; } = new();

    public bool IsTooSoon => store.IsTooSoon(Saved);

    public bool IsQuiet => store.IsQuiet(Saved);

    public DateOnly? RemindedOn => Saved.RemindedAt is { } at ? clock.DayOf(at) : null;

    /// <summary>The mail as it would be, its links still to come.</summary>
    public ReminderWords Words => new(shops.Get(), Languages.OfOrEnglish(Saved.Language), Saved.Name,
        NamedRacket.Of(Saved.Due.Select(d => (d.Racket.Player, d.Racket.Number, d.By))));

    protected override long Asked => ClientId;

    protected override NewReminderStore.Household? Find(long id) => store.Get(id);

    public void OnGet() => Input = new NewReminderInput { FormKey = FormKey.New() };

    public IActionResult OnPost() => this.After(store.Add(User.AtShop(), ClientId, Input.ToEntry()), id => Input.ByPhone
        ? Redirect($"/shop/nudges/answer/{id}")
        : this.GoOn($"/shop/nudges/{id}", "The reminder is made. It is not sent yet."));
}
