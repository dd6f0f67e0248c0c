using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Account;

public sealed class SignOutModel(SignIns signIns) : PageModel
{
    public void OnGet()
    {
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (User.IsSignedIn())
            await signIns.End(HttpContext);
        return Redirect("/");
    }
}
