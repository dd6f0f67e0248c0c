using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Accounts;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Account;

public sealed class SignInModel(SignIns signIns, HalfWay halfWay, PasskeySignIn passkeys, AccountStore accounts) : PageModel
{
    public sealed record Fields
    {
        [Required(ErrorMessage = "Enter your sign-in name.")]
        [StringLength(AccountLimits.Name, ErrorMessage = "Sign-in names have at most 60 characters.")]
        public string? Name { get; init; }

        [Required(ErrorMessage = "Enter your password.")]
        [StringLength(AccountLimits.Password, ErrorMessage = "Passwords have at most 200 characters.")]
        public string? Password { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    [BindProperty(SupportsGet = true)]
    public string? ReturnUrl { get; set; }

    /// <summary>False on a new install, where nobody can sign in yet.</summary>
    public bool HasAccount => accounts.Any();

    /// <summary>Who changed over by PIN can sign in in full.</summary>
    public IActionResult OnGet() => User.IsSignedIn() && !User.IsByPin() ? Onward() : Page();

    public async Task<IActionResult> OnPostAsync()
    {
        if (!ModelState.IsValid)
            return Page();
        var check = await signIns.TryPassword(HttpContext, Input.Name!, Input.Password!);
        if (check.Wait > TimeSpan.Zero)
            return this.TooMany(check.Wait);
        if (check.IsBusy)
            return this.Busy(SignIns.Busy);
        if (check.Account is null)
        {
            ModelState.AddModelError("", "This name and password do not match. Check both and try again.");
            return Page();
        }
        if (check.Account.TwoFactor)
        {
            halfWay.Begin(HttpContext, check.Account);
            return Redirect("/account/code" + QueryString.Create("returnUrl", ReturnUrl ?? ""));
        }
        await signIns.Begin(HttpContext, check.Account, SignInWay.Password);
        return Onward();
    }

    /// <summary>For the browser's own window: which passkeys will do.</summary>
    public async Task<IActionResult> OnPostOptionsAsync() => Content(await passkeys.Options(), "application/json");

    public async Task<IActionResult> OnPostPasskeyAsync(string? credential)
    {
        ModelState.Clear();
        if (await passkeys.AccountOf(HttpContext, credential) is not { } account)
        {
            ModelState.AddModelError("", "This passkey does not work here. Try again, or use name and password.");
            return Page();
        }
        await signIns.Begin(HttpContext, account, SignInWay.Passkey);
        return Onward();
    }

    private LocalRedirectResult Onward() => LocalRedirect(Url.IsLocalUrl(ReturnUrl) ? ReturnUrl : "/shop");
}
