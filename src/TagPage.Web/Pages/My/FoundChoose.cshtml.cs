using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.My;

/// <summary>Chooses what a finder gets. A code comes first, since it can put a telephone number into the open.</summary>
public sealed class FoundChooseModel(ClientOnFileStore clients, MyFoundStore store, CornerCodeStore codes) : FreshModel(clients, codes)
{
    public sealed record Fields
    {
        public string? Choice { get; init; }
        public bool Always { get; init; }
        public bool ShowsMail { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public MyFoundStore.Row Saved { get; private set; } = new();

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
        switch (store.Change(Me.Id, User.CornerSession(), choice, Input.Always, Input.ShowsMail))
        {
            case MyFoundStore.Answer.NotFresh:
                return SayCodeIsOver();
            case MyFoundStore.Answer.NothingToShow:
                ModelState.AddModelError("Input.Choice", Say.Lost.NothingToShow);
                return Page();
        }
        this.Say(Say.Lost.ChoiceSaved);
        return Redirect(Link("/my/found"));
    }
}
