using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Forecast;
using TagPage.Records.Jobs;
using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.OwnPage;

public sealed class RacketModel(ClientOnFileStore clients, OwnPageRacketStore rackets, FeelStore feels, PauseStore pauses, HoursStore hours, CareStore care, ShopStore shops, ShopClock clock) : OwnPageModel(clients)
{
    public OwnPageRacket Racket { get; private set; } = new();

    public TagView View { get; private set; } = default!;

    public RestringBy By { get; private set; } = default!;

    /// <summary>As the household calls the player.</summary>
    public string Player { get; private set; } = "";

    /// <summary>What was said about the strings that are in it.</summary>
    public FeelStore.Row? Felt { get; private set; }

    /// <summary>The first day of the pause the player is in, or null.</summary>
    public DateOnly? PausedSince { get; private set; }

    public IReadOnlyList<HoursStore.Row> LastHours { get; private set; } = [];

    public ShopDetails Shop => shops.Get();

    public IActionResult OnGet(long id)
    {
        if (rackets.Get(Me.Id, id) is not { } racket)
            return NotFound();
        Racket = racket;
        Player = GivenNames.Of(rackets.OfClient(Me.Id).Select(r => r.Player))[racket.Player];
        By = racket.Work(clock.Today, Shop.StartingValues);
        // The household comes without a tag's code, and its page shows none.
        View = TagView.Of(default, racket, rackets.Stringings(Me.Id, id, 1 + TagView.MostEarlier), clock.Today, Shop.StartingValues) with { Guides = care.For(id) };
        Felt = View.Latest is { } latest ? feels.Get(Myself, latest.JobId) : null;
        (PausedSince, LastHours) = (pauses.Now(Myself, racket.PlayerId), hours.Since(Myself, id, day: null, most: 5));
        return Page();
    }
}
