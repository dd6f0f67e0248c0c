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

/// <summary>A helper chooses a password, with the link that the owner gave out.</summary>
public sealed class InvitationModel(InvitationStore store, Owners owners, SignIns signIns, SecurityLog log) : PageModel
{
    public sealed record Fields
    {
        [Required(ErrorMessage = "Enter a password.")]
        [StringLength(AccountLimits.Password, ErrorMessage = "Keep the password within 200 characters.")]
        public string? NewPassword { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    /// <summary>What the helper signs in as; null if the link is used, too old or wrong.</summary>
    public string? Name { get; private set; }

    /// <summary>They have signed in before.</summary>
    public bool IsKnown { get; private set; }

    public void OnGet(string token) => Find(token);

    private Records.Accounts.Account? Find(string token)
    {
        var helper = store.Behind(token);
        (Name, IsKnown) = (helper?.Name, helper?.SignedInAt is not null);
        return helper;
    }

    public async Task<IActionResult> OnPostAsync(string token)
    {
        var helper = Find(token);
        if (helper is null || !ModelState.IsValid || !await owners.WillDo(ModelState, "Input.NewPassword", helper.Name, Input.NewPassword!))
            return Page();
        owners.SetPassword(helper, Input.NewPassword!);
        if (store.Accept(token, helper) is Outcome.Absent)
        {
            Name = null;
            return Page();
        }
        log.Note(HttpContext, AuditEvent.PasswordChanged, helper.Id);
        await signIns.Begin(HttpContext, helper, SignInWay.Link);
        this.Say("Your password is set, and you are signed in.");
        return Redirect("/shop");
    }
}
