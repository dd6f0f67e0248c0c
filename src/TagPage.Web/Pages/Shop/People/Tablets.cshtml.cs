using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.People;

/// <summary>Browsers that several people share, and marking this one.</summary>
public sealed class TabletsModel(TabletStore store, SharedTablet shared, SignIns signIns, SecurityLog log, ShopClock clock) : PageModel
{
    public sealed record Fields
    {
        [Required(ErrorMessage = "Enter what to call it.")]
        [StringLength(TabletStore.LongestName, ErrorMessage = "Keep the name within 60 characters.")]
        public string? Name { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public IReadOnlyList<TabletRow> Tablets => store.All(User.AtShop());

    /// <summary>This browser, where it is one of them.</summary>
    public TabletRow? This => shared.Of(HttpContext);

    public string Day(DateTimeOffset instant) => Formats.Day(clock.DayOf(instant));

    public void OnGet()
    {
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (!ModelState.IsValid)
            return Page();
        log.Note(HttpContext, AuditEvent.BrowserShared, User.AccountId(), Input.Name!);
        var outcome = shared.Share(HttpContext, User.AtShop(), Input.Name!);
        await signIns.End(HttpContext);
        return this.After(outcome, _ => Redirect("/account/change"));
    }

    public IActionResult OnPostEnd(long id)
    {
        ModelState.Clear();
        return this.After(store.End(User.AtShop(), id), _ =>
        {
            log.Note(HttpContext, AuditEvent.BrowserUnshared, User.AccountId());
            return this.GoOn("/shop/people/tablets", "No PIN works there any more, and whoever changed over there is signed out.");
        });
    }
}
