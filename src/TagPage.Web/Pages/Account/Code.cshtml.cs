using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Account;

/// <summary>The second step of signing in, after the password.</summary>
public sealed class CodeModel(HalfWay halfWay, SecondFactor second, SignIns signIns) : PageModel
{
    public sealed record Fields
    {
        [Required(ErrorMessage = "Enter the code.")]
        [StringLength(40, ErrorMessage = "Codes are shorter than that.")]
        public string? Code { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    [BindProperty(SupportsGet = true)]
    public string? ReturnUrl { get; set; }

    /// <summary>False where no password was typed, or too long ago.</summary>
    public bool IsOpen { get; private set; }

    public void OnGet() => IsOpen = halfWay.Of(HttpContext) is not null;

    public async Task<IActionResult> OnPostAsync()
    {
        var account = halfWay.Of(HttpContext);
        IsOpen = account is not null;
        if (account is null || !ModelState.IsValid)
            return Page();
        var check = await second.Try(HttpContext, account, Input.Code!);
        if (check.Wait > TimeSpan.Zero)
            return this.TooMany(check.Wait);
        if (check.Way is not { } way)
        {
            ModelState.AddModelError("Input.Code", "This code is wrong, too old, or was used before. Each code of the app works once, for about a minute.");
            return Page();
        }
        halfWay.End(HttpContext);
        await signIns.Begin(HttpContext, account, way);
        return LocalRedirect(Url.IsLocalUrl(ReturnUrl) ? ReturnUrl : "/shop");
    }
}
