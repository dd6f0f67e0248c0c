using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Account;

/// <summary>The own PIN for shared tablets. The password is asked for before one is set, and not to remove one.</summary>
public sealed class PinModel(UserManager<Records.Accounts.Account> users, PinStore store, Pins pins, PasswordAsked password, SecurityLog log) : AccountPage(users)
{
    private const string Home = "/account/security";

    public sealed record Fields
    {
        [StringLength(AccountLimits.Password, ErrorMessage = "Passwords have at most 200 characters.")]
        public string? Password { get; init; }

        [StringLength(Pins.Longest, ErrorMessage = "Enter 4 to 8 digits.")]
        public string? Pin { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public bool HasPin => store.Has(Mine.Id);

    public void OnGet()
    {
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (ModelState.IsValid && Pins.WrongWith(Input.Pin ?? "") is { } wrong)
            ModelState.AddModelError("Input.Pin", wrong);
        if (!ModelState.IsValid)
            return Page();
        if (await password.Refusal(this, "Input.Password", Input.Password) is { } refused)
            return refused;
        pins.Set(Mine, Input.Pin!);
        log.Note(HttpContext, AuditEvent.PinSet, Mine.Id);
        return this.GoOn(Home, "The PIN is set. It works on shared browsers.");
    }

    public IActionResult OnPostRemove()
    {
        store.Set(Mine.Id, "");
        log.Note(HttpContext, AuditEvent.PinRemoved, Mine.Id);
        return this.GoOn(Home, "The PIN is removed.");
    }
}
