using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>What a finder gets, and what finders did.</summary>
public sealed class FoundModel(ClientOnFileStore clients, MyFoundStore store, ShopClock clock) : CornerModel(clients)
{
    public MyFoundStore.Row Saved { get; private set; } = new();

    public IReadOnlyList<MyFoundStore.Deed> Events { get; private set; } = [];

    public void OnGet() => (Saved, Events) = (store.Get(Me.Id), store.Events(Me.Id));

    public string TimeOf(MyFoundStore.Deed e) => TimeOf(e.At);

    public string TimeOf(DateTimeOffset at) => Spoken.Language.Moment(clock.OnTheWall(at));

    public string RacketOf(MyFoundStore.Deed e) => Spoken.Phrases.Trade.RacketOf.Fill(("player", e.Player), ("number", $"{e.Number}"));

    public static bool CanAnswer(MyFoundStore.Deed e) => e.AnsweredAt is null && e.Reach.Length > 0 && MailAddressAttribute.Fits(e.Reach);
}
