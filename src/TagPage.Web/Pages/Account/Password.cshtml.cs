using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Account;

/// <summary>Changing the password signs out every other browser.</summary>
public sealed class PasswordModel(UserManager<Records.Accounts.Account> users, PasswordAsked password, SignIns signIns, SecurityLog log) : AccountPage(users)
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

    public void OnGet()
    {
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (!ModelState.IsValid)
            return Page();
        if (await password.Refusal(this, "Input.PresentPassword", Input.PresentPassword) is { } refused)
            return refused;
        var changed = await Users.ChangePasswordAsync(Mine, Input.PresentPassword!, Input.NewPassword!);
        if (!changed.Succeeded)
            return this.Refuse(new FieldFault(nameof(Input.NewPassword), changed.Errors.First().Description));
        log.Note(HttpContext, AuditEvent.PasswordChanged, Mine.Id);
        await signIns.Renew(HttpContext, Mine, SignInWay.Password);
        this.Say("The password is changed. All other browsers have been signed out.");
        return Redirect("/account/security");
    }
}
