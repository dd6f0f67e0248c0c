using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Pages.Nudge;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Nudges;

public sealed class ReminderModel(NudgeListStore store, NudgeStore nudges, NudgeTexts texts, ShopStore shops, ShopClock clock) : PageModel
{
    public NudgeRow Nudge { get; private set; } = new();

    public NudgeTexts.Texts Texts { get; private set; } = default!;

    public AnswerForm Answers { get; private set; } = default!;

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public IActionResult OnGet(long id)
    {
        if (store.Get(id) is not { } nudge)
            return NotFound();
        Nudge = nudge;
        Texts = texts.Of(nudge);
        Answers = AnswerForm.Of(new AnswerInput(), nudges.Rackets(id), Languages.English, clock.Today, shops.Get().StartingValues);
        return Page();
    }
}
