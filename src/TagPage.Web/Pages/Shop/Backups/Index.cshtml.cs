using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Backups;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Troubles;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Backups;

public sealed class IndexModel(BackupStore backups, BackupSettingStore settings, TroubleStore troubles, ShopClock clock) : PageModel
{
    public BackupState State => backups.State();

    public IReadOnlyList<BackupFile> All { get; } = backups.List();

    /// <summary>Those that this page is about.</summary>
    public IReadOnlyList<Trouble> Troubles => [.. troubles.All().Where(t => t is not MailGivenUp)];

    public string Kept => settings.Get() is var set ? $"the last one of each of {set.Days} days, {set.Weeks} weeks and {set.Months} months" : "";

    public string At(DateTimeOffset at) => BackupWords.At(clock.OnTheWall(at));

    /// <summary>Why it failed stands on the page it goes back to.</summary>
    public IActionResult OnPost() => backups.Make(BackupFile.ByHand) is null
        ? this.GoOn("/shop/backups", "The backup is made and was checked.")
        : Redirect("/shop/backups");
}
