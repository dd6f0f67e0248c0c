using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Reminders;

/// <summary>The owner notes what a household said on the phone: the same answers with the same effects.</summary>
public sealed class AnswerModel(ReminderListStore list, ReminderStore reminders, AnswerStore answers, ShopStore shops, ShopClock clock) : PageModel
{
    [BindProperty]
    public AnswerInput Input { get; set; } = new();

    public ReminderRow Reminder { get; private set; } = new();

    public AnswerForm Form { get; private set; } = default!;

    private IReadOnlyList<ReminderRacket> _rackets = [];

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = AnswerInput.Of(_rackets, Reminder.Reminders);
        return Show();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        var reader = new AnswerReader(Languages.English, _rackets, clock.Today);
        var read = reader.Read(Input);
        foreach (var (field, sentence) in reader.Faults)
            ModelState.AddModelError("Input." + field, sentence);
        if (!ModelState.IsValid)
            return Show();
        if (answers.Save(reminders.Get(id)!, new(read, Input.Reminders, AnsweredBy.Owner)).Count > 0)
        {
            this.Refuse(new FieldFault("", "Nothing was saved: one of these rackets has been put on the machine in the meantime. Check the bench, then note the rest."));
            _rackets = reminders.Rackets(id);
            return Show();
        }
        this.Say($"The answer of {Reminder.Client} is noted.", "To the bench", "/shop");
        return Redirect($"/shop/nudges/{id}");
    }

    private PageResult Show()
    {
        Form = AnswerForm.Of(Input, _rackets, Languages.English, clock.Today, shops.Get().StartingValues);
        return Page();
    }

    private bool Load(long id)
    {
        if (list.Get(id) is not { Discarded: false, Replaced: false } reminder)
            return false;
        (Reminder, _rackets) = (reminder, reminders.Rackets(id));
        return true;
    }
}
