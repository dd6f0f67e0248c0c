using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Forecast;
using TagPage.Records.Clients;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class ClientModel(ClientPageStore store, FoundChoiceStore choices, ShopStore shops, ShopClock clock) : RecordPage<ClientPageStore.Client>
{
    protected override ClientPageStore.Client? Find(long id) => store.Get(id);

    public void OnGet()
    {
    }

    /// <summary>One press takes back what finders may get.</summary>
    public IActionResult OnPostWithdraw() => this.After(choices.Withdraw(User.AtShop(), Id), _ =>
        this.GoOn($"/shop/clients/{Id}", "From now on, finders get only the shop’s contact details."));

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public RestringBy Work(ClientPageStore.Racket racket) => racket.Work(clock.Today, shops.Get().StartingValues);
}
