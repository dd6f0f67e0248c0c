using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Reminder;

/// <summary>The page behind a reminder's private link.</summary>
public sealed class IndexModel(ReminderStore store, AnswerStore answers, ShopStore shops, ShopClock clock) : PageModel
{
    [BindProperty]
    public AnswerInput Input { get; set; } = new();

    /// <summary>Null for a link that no longer works.</summary>
    public ReminderStore.Row? Reminder { get; private set; }

    public AnswerForm Form { get; private set; } = default!;

    public ShopDetails Shop => shops.Get();

    public string Token { get; private set; } = "";

    public DateOnly ValidUntil => clock.DayOf(Reminder!.ExpiresAt);

    private IReadOnlyList<ReminderRacket> _rackets = [];

    private Language Language => PageLanguage.Of(HttpContext).Language;

    public IActionResult OnGet(string token)
    {
        if (!Load(token))
            return Void();
        Input = AnswerInput.Of(_rackets, Reminder!.Reminders);
        return Show();
    }

    public IActionResult OnPost(string token)
    {
        if (!Load(token))
            return Void();
        var reader = new AnswerReader(Language, _rackets, clock.Today);
        var read = reader.Read(Input);
        foreach (var (field, sentence) in reader.Faults)
            ModelState.AddModelError("Input." + field, sentence);
        if (!ModelState.IsValid)
            return Show();
        var saved = answers.Save(Who.Client(Reminder!.ClientId), Reminder, new(read, Input.Reminders));
        if (saved is Outcome.Refused { Why: AnswersShut shut })
            return Refuse(shut.Rackets);
        return Redirect(PageLanguage.Of(HttpContext).Link("/n/" + token));
    }

    /// <summary>The bench was faster than the client.</summary>
    private PageResult Refuse(IReadOnlyList<long> shut)
    {
        _rackets = store.Rackets(Reminder!.Id);
        foreach (var racket in shut)
            ModelState.AddModelError($"Input.Rackets[{Input.Rackets.FindIndex(r => r.RacketId == racket)}].Answer", Language.Phrases.Reminder.OnMachine);
        return Show();
    }

    private PageResult Show()
    {
        Form = AnswerForm.Of(Input, _rackets, Language, clock.Today, Shop.StartingValues);
        return Page();
    }

    private PageResult Void()
    {
        Response.StatusCode = StatusCodes.Status404NotFound;
        return Page();
    }

    private bool Load(string token)
    {
        Token = token;
        Reminder = store.Of(token);
        if (Reminder is not null)
            _rackets = store.Rackets(Reminder.Id);
        return Reminder is not null;
    }
}
