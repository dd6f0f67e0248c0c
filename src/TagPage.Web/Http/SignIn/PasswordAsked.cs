using System.Security.Claims;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Accounts;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Http.SignIn;

/// <summary>Asks once more for the password before what could hurt: a browser may have been left open.</summary>
public sealed class PasswordAsked(UserManager<Account> users, SignIns signIns)
{
    public async Task<string> NameOf(ClaimsPrincipal who) => (await users.FindByIdAsync(who.AccountId()))?.Name ?? "";

    /// <summary>Null where it is the password of whoever is signed in; else what to answer.</summary>
    public async Task<IActionResult?> Refusal(PageModel page, string field, string? typed)
    {
        if (string.IsNullOrEmpty(typed))
            return Again(page, field, "Enter your password.");
        var check = await signIns.TryPassword(page.HttpContext, await NameOf(page.User), typed);
        if (check.Wait > TimeSpan.Zero)
            return page.TooMany(check.Wait);
        if (check.IsBusy)
            return page.Busy(SignIns.Busy);
        return check.Account?.Id == page.User.AccountId() ? null : Again(page, field, "This is not the password you sign in with.");
    }

    private static PageResult Again(PageModel page, string field, string sentence)
    {
        page.ModelState.AddModelError(field, sentence);
        return page.Page();
    }
}
