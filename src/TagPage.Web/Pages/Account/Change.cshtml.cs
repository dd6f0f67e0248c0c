using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Accounts;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Account;

/// <summary>On a shared tablet: type a PIN, press your name.</summary>
public sealed class ChangeModel(SharedTablet tablets, PinStore store, Pins pins) : PageModel
{
    public sealed record Fields
    {
        [StringLength(Pins.Longest, ErrorMessage = "A PIN has at most 8 digits.")]
        public string? Pin { get; init; }

        [StringLength(32)]
        public string? Who { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    /// <summary>Null where this browser is not a shared one.</summary>
    public TabletRow? Tablet { get; private set; }

    public IReadOnlyList<PinStore.Person> People => store.People(Tablet!.Id);

    [NonHandler]
    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context) => Tablet = tablets.Of(HttpContext);

    public void OnGet()
    {
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (Tablet is null || !ModelState.IsValid)
            return Page();
        if (await pins.Change(HttpContext, Tablet, Input.Who ?? "", Input.Pin ?? "") is not { } wrong)
            return Redirect("/shop");
        ModelState.AddModelError("Input.Pin", wrong);
        return Page();
    }
}
