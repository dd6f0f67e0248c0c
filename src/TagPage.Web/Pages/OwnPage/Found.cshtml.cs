using TagPage.Core.Text;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>What a finder gets, and what finders have done.</summary>
public sealed class FoundModel(ClientOnFileStore clients, OwnPageFoundStore store, ShopClock clock) : OwnPageModel(clients)
{
    public OwnPageFoundStore.Row Saved { get; private set; } = new();

    public IReadOnlyList<OwnPageFoundStore.Deed> Events { get; private set; } = [];

    public void OnGet() => (Saved, Events) = (store.Get(Me.Id), store.Events(Me.Id));

    public string TimeOf(OwnPageFoundStore.Deed e) => TimeOf(e.At);

    public string TimeOf(DateTimeOffset at) => Spoken.Language.Moment(clock.OnTheWall(at));

    public string RacketOf(OwnPageFoundStore.Deed e) => Spoken.Phrases.Trade.RacketOf.Fill(("player", e.Player), ("number", $"{e.Number}"));

    public static bool CanAnswer(OwnPageFoundStore.Deed e) => e.AnsweredAt is null && e.Contact.Length > 0 && MailAddressAttribute.Fits(e.Contact);
}
