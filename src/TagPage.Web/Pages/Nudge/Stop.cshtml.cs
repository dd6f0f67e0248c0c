using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;

namespace TagPage.Web.Pages.Nudge;

/// <summary>
/// Ends the reminders to one household, and can do nothing else. Mail programs press the button by themselves (RFC
/// 8058): without cookie or form token, and the answer must be no redirect.
/// </summary>
[IgnoreAntiforgeryToken]
public sealed class StopModel(NudgeStore store, AnswerStore answers, ShopStore shops) : PageModel
{
    public NudgeStore.Row? Nudge { get; private set; }

    public bool IsDone { get; private set; }

    public ShopDetails Shop => shops.Get();

    public IActionResult OnGet(string token) => Load(token) ? Page() : Void();

    public IActionResult OnPost(string token)
    {
        if (!Load(token))
            return Void();
        answers.Stop(Nudge!.ClientId);
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
        Nudge = store.OfStop(token);
        IsDone = Nudge is { Reminders: false };
        return Nudge is not null;
    }
}
