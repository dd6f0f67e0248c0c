using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Rackets;
using TagPage.Core.Text;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Which rackets are lost, what a finder gets, and what finders did.</summary>
public sealed class FoundModel(ClientOnFileStore clients, OwnPageRacketStore rackets, LostStore lost, FoundChoiceStore choices, OwnPageFoundStore store, ShopClock clock) : OwnPageModel(clients)
{
    public IReadOnlyList<(OwnPageRacket Racket, string Name)> Rackets { get; private set; } = [];

    public FoundChoiceStore.Row Saved { get; private set; } = new();

    public IReadOnlyList<OwnPageFoundStore.Deed> Events { get; private set; } = [];

    public void OnGet()
    {
        (Saved, Events) = (choices.Get(Myself, Me.Id)!, store.Events(Me.Id));
        var mine = rackets.OfClient(Me.Id).Where(r => r.IsMine && (r.IsLost || r.State != RacketState.Gone)).ToList();
        var names = GivenNames.Of(mine.Select(r => r.Player));
        Rackets = [.. mine.Select(r => (r, RacketOf(names[r.Player], r.Number)))];
    }

    /// <summary>A lost racket is back.</summary>
    public IActionResult OnPostBack(long racket) => After(lost.Back(Myself, racket), _ => GoOn("/my/found", Say.Lost.IsBack));

    /// <summary>One press takes back what finders may get: at once, without a code, also for pages that are already open.</summary>
    public IActionResult OnPostWithdraw() => After(choices.Withdraw(Myself, Me.Id), _ => GoOn("/my/found", Say.Lost.Withdrawn));

    public string TimeOf(OwnPageFoundStore.Deed e) => TimeOf(e.At);

    public string TimeOf(DateTimeOffset at) => Spoken.Language.Moment(clock.OnTheWall(at));

    public string RacketOf(OwnPageFoundStore.Deed e) => RacketOf(e.Player, e.Number);

    private string RacketOf(string player, int number) => Spoken.Phrases.Trade.RacketOf.Fill(("player", player), ("number", $"{number}"));

    public static bool CanAnswer(OwnPageFoundStore.Deed e) => e.AnsweredAt is null && e.Contact.Length > 0 && MailAddressAttribute.Fits(e.Contact);
}
