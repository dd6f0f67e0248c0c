using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.DueDates;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Reminders;

/// <summary>All households that are due, to be looked through before reminders go out.</summary>
public sealed class BatchModel(DueStore due, NewReminderStore news, BatchReminder reminder, BatchStore store, ShopStore shops) : PageModel
{
    public sealed record Fields
    {
        public string FormKey { get; init; } = "";

        public List<long> Clients { get; init; } = [];
    }

    /// <summary>As many as somebody can look through; the next batch takes the rest.</summary>
    private const int MostHouseholds = 300;

    /// <param name="Household">Who is due.</param>
    /// <param name="Due">Its rackets that are due.</param>
    /// <param name="WhyNot">Why it is left out; null where it can be reminded.</param>
    public sealed record Line(NewReminderStore.Household Household, IReadOnlyList<KeptDue> Due, LeftOut? WhyNot);

    [BindProperty]
    public Fields Input { get; set; } = new();

    public IReadOnlyList<Line> Lines => field ??= Look();

    public long? Running => store.Running();

    public ShopDetails Shop => shops.Get();

    public void OnGet() =>
        Input = new Fields { FormKey = FormKey.New(), Clients = [.. Lines.Where(l => l.WhyNot is null).Select(l => l.Household.Id)] };

    private List<Line> Look()
    {
        var clients = due.Clients(MostHouseholds);
        var rackets = due.Kept(clients);
        return [.. news.WithoutDates(clients).Select(h => new Line(h, [.. rackets[h.Id]], reminder.WhyNot(h, rackets.Contains(h.Id))))];
    }

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Make(User.AtShop(), Input.FormKey, [.. Input.Clients.Intersect(Lines.Select(l => l.Household.Id))]), id => Redirect($"/shop/nudges/batch/{id}"))
        : Page();
}
