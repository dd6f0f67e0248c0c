using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Reminder;

/// <summary>
/// Ends the reminders to one household, and can do nothing else. Mail programs press the button by themselves (RFC
/// 8058): without cookie or form token, and the answer must be no redirect.
/// </summary>
[IgnoreAntiforgeryToken]
public sealed class StopModel(ReminderStore store, AnswerStore answers, ShopStore shops) : PageModel
{
    public ReminderStore.Row? Reminder { get; private set; }

    public bool IsDone { get; private set; }

    public ShopDetails Shop => shops.Get();

    public IActionResult OnGet(string token) => Load(token) ? Page() : Void();

    public IActionResult OnPost(string token)
    {
        if (!Load(token))
            return Void();
        answers.Stop(Reminder!.ClientId);
        IsDone = true;
        return Page();
    }

    private PageResult Void()
    {
        Response.StatusCode = StatusCodes.Status404NotFound;
        return Page();
    }

    private bool Load(string token)
    {
        Reminder = store.OfStop(token);
        IsDone = Reminder is { Reminders: false };
        return Reminder is not null;
    }
}
