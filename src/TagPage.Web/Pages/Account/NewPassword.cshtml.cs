using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Account;

/// <summary>A new password for an owner who forgot the old one, with a link made on the command line.</summary>
public sealed class NewPasswordModel(NewPasswordStore store, PasskeyStore passkeys, Owners owners, SignIns signIns, SecurityLog log) : PageModel
{
    public sealed record Fields
    {
        [Required(ErrorMessage = "Enter the new password.")]
        [StringLength(AccountLimits.Password, ErrorMessage = "Keep the password within 200 characters.")]
        public string? NewPassword { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    /// <summary>The owner's sign-in name; null if the link is used, too old or wrong.</summary>
    public string? Name { get; private set; }

    /// <summary>More than a password signs in so far.</summary>
    public bool HasMore { get; private set; }

    public void OnGet(string token) => Find(token);

    private Records.Accounts.Account? Find(string token)
    {
        var owner = store.OwnerBehind(token);
        (Name, HasMore) = (owner?.Name, owner is not null && (owner.TwoFactor || passkeys.Of(owner.Id).Count > 0));
        return owner;
    }

    public async Task<IActionResult> OnPostAsync(string token)
    {
        var owner = Find(token);
        if (owner is null || !ModelState.IsValid || !await owners.WillDo(ModelState, "Input.NewPassword", owner.Name, Input.NewPassword!))
            return Page();
        owners.SetPassword(owner, Input.NewPassword!);
        if (store.Set(token, owner) is Outcome.Absent)
        {
            Name = null;
            return Page();
        }
        log.Note(HttpContext, AuditEvent.PasswordChanged, owner.Id);
        await signIns.Begin(HttpContext, owner, SignInWay.Link);
        this.Say("The password is set. All other browsers have been signed out.");
        return Redirect("/shop");
    }
}
