using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Desk;

public sealed class ShiftModel(DeskStore desks, LiveDesks live, ShiftStore shifts) : DeskPage(desks, live)
{
    public sealed record ShiftInput
    {
        [Required(ErrorMessage = "Enter by how many minutes.")]
        public int? Minutes { get; init; }

        public string? Confirmed { get; init; }
    }

    [BindProperty]
    public ShiftInput Input { get; set; } = new();

    public void OnGet()
    {
    }

    public IActionResult OnPost() => ModelState.IsValid && !this.Asks(ShiftStore.Oddities(Saved, Input.Minutes!.Value), Input.Confirmed)
        ? Done(shifts.Shift(Me, Id, Input.Minutes!.Value), Home, $"All times are {Math.Abs(Input.Minutes.Value)} minutes {(Input.Minutes > 0 ? "later" : "earlier")}.")
        : Page();
}
