using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Audit;
using TagPage.Records.Backups;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Backups;

/// <summary>One backup, of the data folder or sent: what it holds, to be downloaded or gone back to.</summary>
public sealed class OneModel(BackupStore backups, BackupSeal seal, Restorer restorer, Uploads uploads, PasswordAsked password, SecurityLog log, ShopClock clock) : PageModel
{
    public sealed record Fields
    {
        [StringLength(AccountLimits.Password, ErrorMessage = "Passwords have at most 200 characters.")]
        public string? Password { get; init; }

        [StringLength(AccountLimits.Password, ErrorMessage = "Passphrases have at most 200 characters.")]
        public string? Passphrase { get; init; }
    }

    private string _file = "";
    private BackupFile? _own;
    private (BackupContents? Held, RestoreFault? Fault)? _seen;

    [BindProperty]
    public Fields Input { get; set; } = new();

    public string Title { get; private set; } = "";

    /// <summary>Who signs in, for the browser's own keeper of passwords.</summary>
    public string Name { get; private set; } = "";

    /// <summary>It lies among the data folder's backups; else it was sent.</summary>
    public bool IsOnFile => _own is not null;

    public bool IsSealed { get; private set; }

    public bool SealsDownloads => seal.IsSet;

    public BackupContents? Held => Seen.Held;

    public BackupContents Live => restorer.Live();

    public RestoreFault? Fault => Seen.Fault;

    /// <summary>All of it is looked through, and only where the page is shown.</summary>
    private (BackupContents? Held, RestoreFault? Fault) Seen => _seen ??= IsSealed ? (null, null) : Look();

    public async Task<IActionResult> OnGetAsync(string name) => await Find(name) ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync(string name)
    {
        if (!await Find(name))
            return NotFound();
        if (await Refused() is { } refused)
            return refused;
        try
        {
            restorer.Restore(_file, Input.Passphrase, User.AccountId());
        }
        catch (NotRestoredException e)
        {
            ModelState.AddModelError(IsSealed ? "Input.Passphrase" : "", RestoreWords.Of(e.Fault));
            return Page();
        }
        uploads.Remove(name);
        return this.GoOn("/shop/backups", $"Your records are back to those of {Title}. What was there before is the newest backup below: to undo this, go back to that one.");
    }

    public async Task<IActionResult> OnPostDownloadAsync(string name)
    {
        if (!await Find(name) || _own is not { } own)
            return NotFound();
        if (await Refused() is { } refused)
            return refused;
        if (seal.IsDamaged)
        {
            ModelState.AddModelError("", "The passphrase for backups is damaged, so nothing was downloaded: it would not have been sealed. Set the passphrase again under Backups → Passphrase.");
            return Page();
        }
        log.Note(HttpContext, AuditEvent.BackupDownloaded, User.AccountId(), own.Name);
        return seal.IsSet
            ? File(seal.Sealed(_file), "application/octet-stream", own.In("", isSealed: true).Name)
            : PhysicalFile(_file, "application/octet-stream", own.Name);
    }

    private async Task<bool> Find(string name)
    {
        Name = await password.NameOf(User);
        if (backups.List().FirstOrDefault(b => b.Name == name) is { } own)
            (_own, _file, Title) = (own, own.Path, $"Backup of {BackupWords.At(clock.OnTheWall(own.MadeAt))}");
        else if (uploads.FolderOf(name) is { } folder && Directory.GetFiles(folder) is [var sent])
            (_file, Title) = (sent, "The backup that you sent");
        else
            return false;
        IsSealed = SealedFile.IsSealed(_file);
        return true;
    }

    private (BackupContents?, RestoreFault?) Look()
    {
        try
        {
            return (restorer.Look(_file, passphrase: null), null);
        }
        catch (NotRestoredException e)
        {
            return (null, e.Fault);
        }
    }

    private async Task<IActionResult?> Refused()
    {
        if (!ModelState.IsValid)
            return Page();
        return await password.Refusal(this, "Input.Password", Input.Password);
    }
}
