using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Records.Clients;
using TagPage.Records.Loans;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Loans;

/// <summary>Lends one of the shop’s own rackets to a client.</summary>
public sealed class LendModel(LoanStore loans, LoanRacketStore rackets, ClientPageStore clients, ShopClock clock) : RecordPage<ClientPageStore.Client>
{
    /// <summary>Common practice for a test; the shop changes it.</summary>
    private const int UsualDays = 7;

    [BindProperty(SupportsGet = true, Name = "client")]
    public long ClientId { get; set; }

    [BindProperty]
    public LendInput Input { get; set; } = new();

    public IReadOnlyList<SelectListItem> Rackets => [new SelectListItem("Choose", ""), .. rackets.List(User.AtShop()).Where(racket => racket.IsFree).Select(racket => new SelectListItem(racket.Name, $"{racket.Id}"))];

    protected override long Asked => ClientId;

    protected override ClientPageStore.Client? Find(long id) => clients.Get(id);

    public void OnGet() => Input = new LendInput { FormKey = FormKey.New(), LentOn = clock.Today, DueOn = clock.Today.AddDays(UsualDays) };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(loans.Lend(User.AtShop(), ClientId, Input.ToEntry()), id => this.GoOn($"/shop/clients/{ClientId}", $"{Saved.Name} has {loans.Get(User.AtShop(), id)!.Racket} now."))
        : Page();
}
