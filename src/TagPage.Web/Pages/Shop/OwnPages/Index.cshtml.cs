using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Prepaid;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>One client's own page: the private links to it, and forgetting the client.</summary>
public sealed class IndexModel(ClientOnFileStore clients, OwnPageLinkStore links, OwnPageSessionStore sessions, ForgetStore forget, PrepaidStore prepaid, ShopClock clock)
    : RecordPage<ClientOnFileStore.Row>
{
    public IReadOnlyList<OwnPageLinkStore.Row> Links => links.OfClient(Id);

    public int Browsers => sessions.Count(Id);

    /// <summary>Restrings paid in advance that go with the client’s data.</summary>
    public int? PrepaidLost => prepaid.LostWith(User.AtShop(), Id);

    public bool IsLive(OwnPageLinkStore.Row link) => links.IsLive(link);

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    protected override ClientOnFileStore.Row? Find(long id) => clients.Get(id);

    public void OnGet()
    {
    }

    public IActionResult OnPost() => this.After(links.Make(User.AtShop(), Id), link => Redirect($"/shop/corner/link/{link}"));

    public IActionResult OnPostSignOut() => this.After(sessions.EndAll(User.AtShop(), Id), _ =>
        this.GoOn($"/shop/corner/{Id}", "All links of this client are withdrawn, including those in reminders and notices, and every browser is signed out."));

    public IActionResult OnPostForget() => this.After(forget.Ask(User.AtShop(), Id), _ =>
        this.GoOn($"/shop/corner/{Id}", "The client’s data will be deleted in 7 days. Until then you can undo it."));

    public IActionResult OnPostKeep() => this.After(forget.Undo(User.AtShop(), Id), _ => this.GoOn($"/shop/corner/{Id}", "The client’s data is kept."));
}
