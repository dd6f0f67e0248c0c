using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Backups;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Backups;

public sealed class PassphraseModel(BackupSeal seal, PasswordAsked password) : PageModel
{
    public sealed record Fields
    {
        [StringLength(AccountLimits.Password, ErrorMessage = "Keep it within 200 characters.")]
        public string? Passphrase { get; init; }

        [StringLength(AccountLimits.Password, ErrorMessage = "Passwords have at most 200 characters.")]
        public string? Password { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public string Name { get; private set; } = "";

    public bool IsSet => seal.IsSet;

    public async Task OnGetAsync() => Name = await password.NameOf(User);

    public async Task<IActionResult> OnPostAsync()
    {
        await OnGetAsync();
        if (Input.Passphrase is not { Length: >= AccountLimits.ShortestPassword })
            ModelState.AddModelError("Input.Passphrase", "Use at least 12 characters.");
        if (!ModelState.IsValid)
            return Page();
        if (await password.Refusal(this, "Input.Password", Input.Password) is { } refused)
            return refused;
        seal.Set(Input.Passphrase!);
        return this.GoOn("/shop/backups", "Backups that leave this machine are sealed from now on.");
    }

    public async Task<IActionResult> OnPostRemoveAsync()
    {
        await OnGetAsync();
        if (await password.Refusal(this, "Input.Password", Input.Password) is { } refused)
            return refused;
        seal.Remove();
        return this.GoOn("/shop/backups", "Backups are no longer sealed.");
    }
}
