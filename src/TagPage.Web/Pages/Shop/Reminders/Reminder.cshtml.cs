using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Web.Mail;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class ReminderModel(ReminderListStore store, ReminderStore reminders, ReminderTexts texts, ShopStore shops, ShopClock clock) : PageModel
{
    public ReminderRow Reminder { get; private set; } = new();

    public ReminderTexts.Texts Texts { get; private set; } = default!;

    public AnswerForm Answers { get; private set; } = default!;

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public IActionResult OnGet(long id)
    {
        if (store.Get(id) is not { } reminder)
            return NotFound();
        Reminder = reminder;
        Texts = texts.Of(reminder);
        Answers = AnswerForm.Of(new AnswerInput(), reminders.Rackets(id), Languages.English, clock.Today, shops.Get().StartingValues);
        return Page();
    }
}
