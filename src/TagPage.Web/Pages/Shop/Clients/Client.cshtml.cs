using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Forecast;
using TagPage.Records.Clients;
using TagPage.Records.Loans;
using TagPage.Records.LostAndFound;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class ClientModel(ClientPageStore store, FoundChoiceStore choices, LoanStore loans, LoanRacketStore lent, PrepaidStore prepaid, ShopStore shops, ShopClock clock) : RecordPage<ClientPageStore.Client>
{
    protected override ClientPageStore.Client? Find(long id) => store.Get(id);

    public void OnGet()
    {
    }

    /// <summary>One press takes back what finders may get.</summary>
    public IActionResult OnPostWithdraw() => this.After(choices.Withdraw(User.AtShop(), Id), _ =>
        this.GoOn($"/shop/clients/{Id}", "From now on, finders get only the shop’s contact details."));

    /// <summary>What they have of the shop’s own rackets, then the last ones they had.</summary>
    public IReadOnlyList<LoanRow> Loans => [.. loans.OfClient(User.AtShop(), Id).Take(MostLoans)];

    private const int MostLoans = 10;

    /// <summary>The shop has rackets to lend.</summary>
    public bool CanLend => lent.List(User.AtShop()).Any(racket => !racket.IsEnded);

    public DateOnly Today => clock.Today;

    /// <summary>Restrings that they paid in advance.</summary>
    public IReadOnlyList<PrepaidStore.Row> Prepaid => prepaid.Of(User.AtShop(), Party.Client(Id));

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public RestringBy Work(ClientPageStore.Racket racket) => racket.Work(clock.Today, shops.Get().StartingValues);
}
