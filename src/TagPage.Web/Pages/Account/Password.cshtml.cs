using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Account;

/// <summary>Changing the password signs out every other browser.</summary>
public sealed class PasswordModel(UserManager<Records.Accounts.Account> users, SignIns signIns, SecurityLog log) : PageModel
{
    public sealed record Fields
    {
        [Required(ErrorMessage = "Enter your current password.")]
        [StringLength(AccountLimits.Password, ErrorMessage = "Passwords have at most 200 characters.")]
        public string? PresentPassword { get; init; }

        [Required(ErrorMessage = "Enter the new password.")]
        [StringLength(AccountLimits.Password, ErrorMessage = "Keep the password within 200 characters.")]
        public string? NewPassword { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public string Name { get; private set; } = "";

    public async Task<IActionResult> OnGetAsync()
    {
        if (await users.FindByIdAsync(User.AccountId()) is not { } account)
            return NotFound();
        Name = account.Name;
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (await users.FindByIdAsync(User.AccountId()) is not { } signedIn)
            return NotFound();
        Name = signedIn.Name;
        if (!ModelState.IsValid)
            return Page();
        var check = await signIns.TryPassword(HttpContext, Name, Input.PresentPassword!);
        if (check.Wait > TimeSpan.Zero)
            return this.TooMany(check.Wait);
        if (check.IsBusy)
            return this.Busy(SignIns.Busy);
        if (check.Account is not { } account)
            return Refuse(nameof(Input.PresentPassword), "This is not the password you sign in with.");
        var changed = await users.ChangePasswordAsync(account, Input.PresentPassword!, Input.NewPassword!);
        if (!changed.Succeeded)
            return Refuse(nameof(Input.NewPassword), changed.Errors.First().Description);
        log.Note(HttpContext, AuditEvent.PasswordChanged, account.Id);
        await signIns.Renew(HttpContext, account, SignInWay.Password);
        this.Say("The password is changed. All other browsers have been signed out.");
        return Redirect("/shop/settings");
    }

    private PageResult Refuse(string field, string sentence)
    {
        ModelState.AddModelError("Input." + field, sentence);
        return Page();
    }
}
