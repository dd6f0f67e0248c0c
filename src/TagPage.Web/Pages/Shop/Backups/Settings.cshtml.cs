using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Backups;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Backups;

public sealed class SettingsModel(BackupSettingStore store) : PageModel
{
    public sealed record Fields
    {
        [StringLength(BackupSetting.LongestFolder, ErrorMessage = "Keep it within 300 characters.")]
        public string? Folder { get; init; }

        [Required(ErrorMessage = "Enter a number of days.")]
        [Range(1, BackupSetting.MostDays, ErrorMessage = "Enter a number from 1 to 60.")]
        public int? Days { get; init; }

        [Required(ErrorMessage = "Enter a number of weeks; 0 for none.")]
        [Range(0, BackupSetting.MostWeeks, ErrorMessage = "Enter a number from 0 to 53.")]
        public int? Weeks { get; init; }

        [Required(ErrorMessage = "Enter a number of months; 0 for none.")]
        [Range(0, BackupSetting.MostMonths, ErrorMessage = "Enter a number from 0 to 60.")]
        public int? Months { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public void OnGet()
    {
        var set = store.Get();
        Input = new Fields { Folder = set.Folder, Days = set.Days, Weeks = set.Weeks, Months = set.Months };
    }

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        var wanted = new BackupSetting { Folder = Input.Folder ?? "", Days = Input.Days!.Value, Weeks = Input.Weeks!.Value, Months = Input.Months!.Value };
        return this.After(store.Change(User.AtShop(), wanted), _ => this.GoOn("/shop/backups", "Saved. It applies from the next backup on."));
    }
}
