using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Reminder;

/// <summary>The page behind a reminder's private link.</summary>
public sealed class IndexModel(ReminderStore store, AnswerStore answers, ShopStore shops, ShopClock clock) : LinkPage<ReminderStore.Row>
{
    [BindProperty]
    public AnswerInput Input { get; set; } = new();

    public AnswerForm Form { get; private set; } = default!;

    public ShopDetails Shop => shops.Get();

    public DateOnly ValidUntil => clock.DayOf(Saved.ExpiresAt);

    private IReadOnlyList<ReminderRacket> _rackets = [];

    private Language Language => PageLanguage.Of(HttpContext).Language;

    protected override ReminderStore.Row? Find(string key)
    {
        var reminder = store.Of(key);
        if (reminder is not null)
            _rackets = store.Rackets(reminder.Id);
        return reminder;
    }

    public PageResult OnGet()
    {
        Input = AnswerInput.Of(_rackets, Saved.Reminders);
        return Show();
    }

    public IActionResult OnPost(string token)
    {
        var reader = new AnswerReader(Language, _rackets, clock.Today);
        var read = reader.Read(Input);
        foreach (var (field, sentence) in reader.Faults)
            ModelState.AddModelError("Input." + field, sentence);
        if (!ModelState.IsValid)
            return Show();
        var saved = answers.Save(Who.Client(Saved.ClientId), Saved, new(read, Input.Reminders));
        if (saved is Outcome.Refused { Why: AnswersShut shut })
            return Refuse(shut.Rackets);
        return Redirect(PageLanguage.Of(HttpContext).Link("/n/" + token));
    }

    /// <summary>The bench was faster than the client.</summary>
    private PageResult Refuse(IReadOnlyList<long> shut)
    {
        _rackets = store.Rackets(Saved.Id);
        foreach (var racket in shut)
            ModelState.AddModelError($"Input.Rackets[{Input.Rackets.FindIndex(r => r.RacketId == racket)}].Answer", Language.Phrases.Reminder.OnMachine);
        return Show();
    }

    private PageResult Show()
    {
        Form = AnswerForm.Of(Input, _rackets, Language, clock.Today, Shop);
        return Page();
    }
}
