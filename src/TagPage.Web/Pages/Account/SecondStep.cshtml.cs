using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Account;

/// <summary>Setting up the second step of signing in: password, then a first code from the app, then the recovery codes, once.</summary>
public sealed class SecondStepModel(UserManager<Records.Accounts.Account> users, SecondFactor second, PasswordAsked password, SealedNotes notes, SignIns signIns, SecurityLog log) : AccountPage(users)
{
    private const string Purpose = "key of an app that is being set up";

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(30);

    public sealed record Fields
    {
        [StringLength(AccountLimits.Password, ErrorMessage = "Passwords have at most 200 characters.")]
        public string? Password { get; init; }

        [StringLength(20, ErrorMessage = "Codes are shorter than that.")]
        public string? Code { get; init; }

        /// <summary>Sealed, and the account's: nothing is saved before a code has shown that the app knows it.</summary>
        public string? Key { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public bool IsOn => Mine.TwoFactor;

    public int Left { get; private set; }

    /// <summary>Of the app that is being set up.</summary>
    public string? Key { get; private set; }

    public string Link => second.LinkOf(Mine, Key!);

    /// <summary>In the answer that makes them, and never again.</summary>
    public IReadOnlyList<string> Recovery { get; private set; } = [];

    public async Task OnGetAsync() => Left = await second.CodesLeft(Mine);

    public async Task<IActionResult> OnPostAsync()
    {
        if (await Refusal() is { } refused)
            return refused;
        if (IsOn)
            return RedirectToPage();
        Key = second.NewKey();
        ModelState.Clear();
        Input = new Fields { Key = notes.Write(Purpose, Mine.Id, Key) };
        return Page();
    }

    public async Task<IActionResult> OnPostOnAsync()
    {
        Left = await second.CodesLeft(Mine);
        if (IsOn || notes.Read(Purpose, Input.Key, Patience) is not [var account, var key] || account != Mine.Id)
            return RedirectToPage();
        Key = key;
        if (!ModelState.IsValid)
            return Page();
        if (await second.TurnOn(Mine, key, Input.Code ?? "") is not { } recovery)
            return this.Refuse(new FieldFault("Code", "This is not the code for this key. Is the clock of the phone right?"));
        // Those that signed in with the password alone are signed out.
        await signIns.Renew(HttpContext, Mine, SignInWay.AppCode);
        log.Note(HttpContext, AuditEvent.CodesOn, Mine.Id);
        Recovery = recovery;
        return Page();
    }

    public async Task<IActionResult> OnPostRecoveryAsync()
    {
        if (await Refusal() is { } refused)
            return refused;
        if (!IsOn)
            return RedirectToPage();
        Recovery = await second.NewCodes(Mine);
        log.Note(HttpContext, AuditEvent.RecoveryCodesMade, Mine.Id);
        return Page();
    }

    public async Task<IActionResult> OnPostOffAsync()
    {
        if (await Refusal() is { } refused)
            return refused;
        await second.TurnOff(Mine);
        await signIns.Renew(HttpContext, Mine, SignInWay.Password);
        log.Note(HttpContext, AuditEvent.CodesOff, Mine.Id);
        return this.GoOn("/account/security", "The password alone is enough again. All other browsers have been signed out.");
    }

    public static string InFours(string key) => string.Join(' ', key.Chunk(4).Select(four => new string(four)));

    private async Task<IActionResult?> Refusal()
    {
        Left = await second.CodesLeft(Mine);
        return ModelState.IsValid ? await password.Refusal(this, "Input.Password", Input.Password) : Page();
    }
}
