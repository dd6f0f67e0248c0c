using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Clients;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Chooses what a finder gets. A code comes first, because it can make a phone number public.</summary>
public sealed class FoundChooseModel(ClientOnFileStore clients, OwnPageFoundStore store, OwnPageCodeStore codes) : FreshModel(clients, codes)
{
    public sealed record Fields
    {
        public string? Choice { get; init; }
        public bool Always { get; init; }
        public bool ShowsMail { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public OwnPageFoundStore.Row Saved { get; private set; } = new();

    protected override string Here => "/my/found/choose";

    public IActionResult OnGet()
    {
        if (AskForCode() is { } code)
            return code;
        Saved = store.Get(Me.Id);
        Input = new Fields { Choice = Saved.Choice.ToString(), Always = Saved.Always, ShowsMail = Saved.ShowsMail };
        return Page();
    }

    public IActionResult OnPost()
    {
        Saved = store.Get(Me.Id);
        if (!Enum.TryParse<FoundChoice>(Input.Choice, out var choice) || !Enum.IsDefined(choice))
            ModelState.AddModelError("Input.Choice", Say.Lost.ChoiceMissing);
        if (!ModelState.IsValid)
            return Page();
        switch (store.Change(Me.Id, User.OwnPageSession(), choice, Input.Always, Input.ShowsMail))
        {
            case OwnPageFoundStore.Answer.NotFresh:
                return SayCodeIsOver();
            case OwnPageFoundStore.Answer.NothingToShow:
                ModelState.AddModelError("Input.Choice", Say.Lost.NothingToShow);
                return Page();
        }
        this.Say(Say.Lost.ChoiceSaved);
        return Redirect(Link("/my/found"));
    }
}
