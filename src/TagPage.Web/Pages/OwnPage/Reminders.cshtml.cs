using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Clients;
using TagPage.Records.OwnPages;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>How and when the client is reminded, and in which language.</summary>
public sealed class RemindersModel(ClientOnFileStore clients, OwnPageDetailsStore store) : OwnPageModel(clients)
{
    private const string Never = "Never";

    public sealed record Fields
    {
        public string? Way { get; init; }
        public List<int> Quiet { get; init; } = [];
        public string? Language { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public void OnGet()
    {
        var row = store.Get(Me.Id);
        Input = new Fields { Way = row.Reminders ? row.RemindBy.ToString() : Never, Quiet = [.. QuietMonths.Of(row.QuietMonths)], Language = row.Language };
    }

    public IActionResult OnPost()
    {
        if (Input.Way is not (Never or nameof(RemindBy.Mail) or nameof(RemindBy.Sms)))
            ModelState.AddModelError("Input.Way", Say.Details.WayMissing);
        if (Languages.Of(Input.Language) is not { } language)
        {
            ModelState.AddModelError("Input.Language", Say.Details.LanguageMissing);
            return Page();
        }
        if (!ModelState.IsValid)
            return Page();
        var wish = new ReminderWishEntry
        {
            Language = language.Code,
            Wanted = Input.Way != Never,
            By = Enum.TryParse<RemindBy>(Input.Way, out var by) ? by : null,
            QuietMonths = QuietMonths.From(Input.Quiet),
        };
        return After(store.ChangeReminders(Myself, wish), _ => GoOn("/my/details", Say.Details.Saved));
    }
}
