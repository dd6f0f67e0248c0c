using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Sports;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Desk;

/// <summary>A racket on file comes to the desk: one press for the same as last round.</summary>
public sealed class RacketModel(DeskStore desks, LiveDesks live, IntakeStore intakes, StringPickStore strings, ShopStore shops, DeskFindStore finds, JobStore jobs)
    : IntakePage(desks, live, intakes, strings, shops)
{
    [BindProperty]
    public IntakeInput Input { get; set; } = new();

    /// <summary>Of the tag that was scanned.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Code { get; set; }

    [BindProperty]
    public string? Answer { get; set; }

    protected override IntakeInput Form => Input;

    public NewJobStore.RacketRow Racket { get; private set; } = new();

    public string Whose => DeskWords.Player(User.IsHelper(), Racket.Junior, Racket.Player, Racket.LabelName, Round?.Number);

    /// <summary>Where the form was filled in from.</summary>
    public string? FilledFrom => Round is { } round ? $"number {round.Number}, the last round" : Last is { } last ? $"ticket {last.Ticket}" : null;

    protected override Sport Sport => Racket.Sport;

    private EntryRow? Round { get; set; }

    // Whoever may take the racket in may see how it was strung last.
    private JobRow? Last => Racket.LastJobId is { } last ? jobs.Get(Who.Shop, last) : null;

    protected override DeskBoard? Find(long id)
    {
        var board = base.Find(id);
        var racket = long.Parse((string)RouteData.Values["racket"]!, CultureInfo.InvariantCulture);
        if (board is null || Intakes.Racket(Me, id, racket, HttpContext.Request.Query["code"]) is not { } known)
            return null;
        (Racket, Round) = (known, finds.LastRound(Me, id, racket));
        return board;
    }

    public void OnGet() => Input = IntakeInput.Fill(new IntakeInput(), Round, Last, Today, Shop.TensionUnit);

    public IActionResult OnPost() => Save(Input, Input.ToEntry(Today) with { RacketId = Racket.Id, Code = Code }, Racket.Sport, Last, Answer);
}
