using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Clients;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Chooses what a finder gets. A code comes first, since it can put a telephone number into the open.</summary>
public sealed class FoundChooseModel(ClientOnFileStore clients, FoundChoiceStore store, OwnPageCodeStore codes) : OwnPageModel(clients)
{
    public sealed record Fields
    {
        public int Version { get; init; }
        public string? Choice { get; init; }
        public bool Always { get; init; }
        public bool ShowsMail { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public FoundChoiceStore.Row Saved => store.Get(Myself, Me.Id)!;

    public IActionResult OnGet()
    {
        if (AskForCode(codes) is { } code)
            return code;
        var saved = Saved;
        Input = new Fields { Version = saved.Version, Choice = saved.Choice.ToString(), Always = saved.Always, ShowsMail = saved.ShowsMail };
        return Page();
    }

    public IActionResult OnPost()
    {
        if (!Enum.TryParse<FoundChoice>(Input.Choice, out var choice) || !Enum.IsDefined(choice))
            ModelState.AddModelError("Input.Choice", Say.Lost.ChoiceMissing);
        if (!ModelState.IsValid)
            return Page();
        var entry = new FoundChoiceEntry { Version = Input.Version, Choice = choice, Always = Input.Always, ShowsMail = Input.ShowsMail };
        return After(store.Change(Myself, Me.Id, entry), _ => GoOn("/my/found", Say.Lost.ChoiceSaved), Saved.Version);
    }
}
