using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Reminders;

/// <summary>The owner notes what a household said on the phone: the same answers with the same effects.</summary>
public sealed class AnswerModel(ReminderListStore list, ReminderStore reminders, AnswerStore answers, ShopStore shops, ShopClock clock) : RecordPage<ReminderRow>
{
    [BindProperty]
    public AnswerInput Input { get; set; } = new();

    public AnswerForm Form { get; private set; } = default!;

    private IReadOnlyList<ReminderRacket> _rackets = [];

    protected override ReminderRow? Find(long id)
    {
        if (list.Get(id) is not { Discarded: false, Replaced: false } reminder)
            return null;
        _rackets = reminders.Rackets(id);
        return reminder;
    }

    public IActionResult OnGet()
    {
        Input = AnswerInput.Of(_rackets, Saved.Reminders);
        return Show();
    }

    public IActionResult OnPost()
    {
        var reader = new AnswerReader(Languages.English, _rackets, clock.Today);
        var read = reader.Read(Input);
        foreach (var (field, sentence) in reader.Faults)
            ModelState.AddModelError("Input." + field, sentence);
        if (!ModelState.IsValid)
            return Show();
        var saved = answers.Save(User.AtShop(), reminders.Get(Id)!, new(read, Input.Reminders));
        if (saved is Outcome.Refused)
            _rackets = reminders.Rackets(Id);
        Show();
        return this.After(saved, _ => this.GoOn($"/shop/nudges/{Id}", $"{Saved.Client}’s answer is noted.", "Back to the bench", "/shop"));
    }

    private PageResult Show()
    {
        Form = AnswerForm.Of(Input, _rackets, Languages.English, clock.Today, shops.Get());
        return Page();
    }
}
