using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>What a household notes of the play with one racket.</summary>
/// <param name="Page">The page it stands on.</param>
/// <param name="Racket">The racket.</param>
/// <param name="Player">As the household calls the player.</param>
/// <param name="PausedSince">The first day of the pause the player is in, or null.</param>
/// <param name="LastHours">The newest first.</param>
public sealed record PlayCard(OwnPageModel Page, OwnPageRacket Racket, string Player, DateOnly? PausedSince, IReadOnlyList<HoursStore.Row> LastHours)
{
    public static PlayCard Of(OwnPageModel page, Who who, OwnPageRacket racket, OwnPageRacketStore rackets, PauseStore pauses, HoursStore hours) => new(
        page,
        racket,
        GivenNames.Of(rackets.OfClient(page.Me.Id).Select(r => r.Player))[racket.Player],
        pauses.Now(who, racket.PlayerId),
        hours.Since(who, racket.RacketId, day: null, most: 5));
}
