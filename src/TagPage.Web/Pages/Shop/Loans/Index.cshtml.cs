using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Loans;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Loans;

/// <summary>Rackets of the shop’s own, and who has them.</summary>
public sealed class IndexModel(LoanRacketStore rackets, LoanStore loans, ShopClock clock) : PageModel
{
    public IReadOnlyList<LoanRacketRow> Rackets => rackets.List(User.AtShop());

    public DateOnly Today => clock.Today;

    public void OnGet()
    {
    }

    /// <summary>It was not given back after all.</summary>
    public IActionResult OnPostReopen(long loan) => this.After(loans.Reopen(User.AtShop(), loan),
        id => this.GoOn("/shop/loans", $"{loans.Get(User.AtShop(), id)!.Client} has {loans.Get(User.AtShop(), id)!.Racket} again."));
}
