using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Tags;
using TagPage.Records.Events;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Desk;

/// <summary>Whose racket comes in: a scanned tag leads to it at once.</summary>
public sealed class InModel(DeskStore desks, LiveDesks live, DeskFindStore finds) : DeskPage(desks, live)
{
    [BindProperty(SupportsGet = true)]
    public string? Q { get; set; }

    public IReadOnlyList<DeskFindStore.Row> Found { get; private set; } = [];

    public string Whose(DeskFindStore.Row racket) => DeskWords.Player(User.IsHelper(), racket.Junior, racket.Player, racket.LabelName, racket.LastNumber);

    public IActionResult OnGet()
    {
        if (TagCode.Read(Q).Code is { } code && finds.ByTag(Me, Id, code) is { } racket)
            return Redirect(racket.DeskNumber is { } number ? $"{Home}/entry/{number}" : $"{Home}/in/racket/{racket.RacketId}?code={code}");
        Found = finds.ByName(Me, Id, Q);
        return Page();
    }
}
