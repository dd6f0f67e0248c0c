using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Account;

/// <summary>The owner's passkeys. The password is asked for before one is made, and never to remove one.</summary>
public sealed class PasskeysModel(
    UserManager<Records.Accounts.Account> users, SignInManager<Records.Accounts.Account> cookies, PasskeyStore store, PasswordAsked password, ShopClock clock,
    SecurityLog log) : AccountPage(users)
{
    private const string Here = "/account/passkeys";

    public sealed record Fields
    {
        [StringLength(PasskeyStore.LongestName, ErrorMessage = "Keep the name within 60 characters.")]
        public string? Title { get; init; }

        [StringLength(AccountLimits.Password, ErrorMessage = "Passwords have at most 200 characters.")]
        public string? Password { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public IReadOnlyList<PasskeyRow> Passkeys { get; private set; } = [];

    public void OnGet() => Passkeys = store.Of(Mine.Id);

    /// <summary>For the browser's own window: what kind of passkey to make. Whoever gets this far has typed the password.</summary>
    public async Task<IActionResult> OnPostOptionsAsync()
    {
        if (await password.Refusal(this, "Input.Password", Input.Password) is { } refused)
            return ModelState.IsValid ? refused : BadRequest(Fault);
        return ModelState.IsValid
            ? Content(await cookies.MakePasskeyCreationOptionsAsync(new PasskeyUserEntity { Id = Mine.Id, Name = Name, DisplayName = Name }), "application/json")
            : BadRequest(Fault);
    }

    private string Fault => ModelState.Values.SelectMany(entry => entry.Errors).First().ErrorMessage;

    public async Task<IActionResult> OnPostAsync(string? credential)
    {
        var made = await Check(credential);
        if (made is not { Succeeded: true } || made.UserEntity.Id != Mine.Id)
            return this.GoOn(Here, "No passkey was made. Try again; it must be done within five minutes.");
        made.Passkey.Name = string.IsNullOrWhiteSpace(Input.Title) ? $"Passkey of {Formats.Day(clock.Today)}" : Input.Title.Trim();
        if (!(await Users.AddOrUpdatePasskeyAsync(Mine, made.Passkey)).Succeeded)
            return this.GoOn(Here, "No passkey was made: the account was changed meanwhile. Try again.");
        log.Note(HttpContext, AuditEvent.PasskeyMade, Mine.Id);
        return this.GoOn(Here, $"You can now sign in with the passkey “{made.Passkey.Name}”.");
    }

    public IActionResult OnPostRemove(string? id)
    {
        if (!IsHex(id) || !store.Remove(Mine.Id, Convert.FromHexString(id!)))
            return NotFound();
        log.Note(HttpContext, AuditEvent.PasskeyRemoved, Mine.Id);
        return this.GoOn(Here, "That passkey no longer works. If its device is lost, sign out its browser too.");
    }

    public string Day(DateTimeOffset instant) => Formats.Day(clock.DayOf(instant));

    private static bool IsHex(string? id) => id is { Length: > 0 } && id.Length % 2 == 0 && id.All(char.IsAsciiHexDigit);

    private async Task<PasskeyAttestationResult?> Check(string? credential)
    {
        try
        {
            return string.IsNullOrEmpty(credential) ? null : await cookies.PerformPasskeyAttestationAsync(credential);
        }
        catch (InvalidOperationException)
        {
            // Nothing was asked for in this browser, or too long ago.
            return null;
        }
    }
}
