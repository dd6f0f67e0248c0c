using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Backups;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Troubles;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Backups;

[UploadLimit(Most)]
public sealed class IndexModel(BackupStore backups, BackupSettingStore settings, BackupSeal seal, TroubleStore troubles, Uploads uploads, ShopClock clock) : PageModel
{
    /// <summary>Bytes.</summary>
    private const long Most = 4_000_000_000;

    [BindProperty]
    public IFormFile? Sent { get; set; }

    public bool IsSealing => seal.IsSet;

    public BackupState State => field ??= backups.State();

    public IReadOnlyList<BackupFile> All => field ??= backups.List();

    /// <summary>Those that this page is about.</summary>
    public IReadOnlyList<Trouble> Troubles => [.. troubles.All(State).Where(t => t is not MailGivenUp)];

    public string Kept
    {
        get
        {
            var plan = settings.Get().Plan;
            return $"the last one of each of {plan.Days} days, {plan.Weeks} weeks and {plan.Months} months";
        }
    }

    public string At(DateTimeOffset at) => BackupWords.At(clock.OnTheWall(at));

    /// <summary>Several may be made within a minute of going back time and again.</summary>
    public string Name(BackupFile backup) => At(backup.MadeAt) + (backup.IsRegular ? "" : string.Create(CultureInfo.InvariantCulture, $":{backup.MadeAt:ss}"));

    /// <summary>Why it failed stands on the page it goes back to.</summary>
    public IActionResult OnPost() => backups.Make(BackupFile.ByHand) is null
        ? this.GoOn("/shop/backups", "The backup has been made and checked.")
        : Redirect("/shop/backups");

    /// <summary>Keeps the file for an hour, to be looked at.</summary>
    public async Task<IActionResult> OnPostSend(CancellationToken cancel)
    {
        if (Sent is { Length: > 0 } sent)
            return Redirect("/shop/backups/one/" + await uploads.Keep(file => sent.CopyToAsync(file, cancel)));
        ModelState.AddModelError(nameof(Sent), "Choose a backup file.");
        return Page();
    }
}
