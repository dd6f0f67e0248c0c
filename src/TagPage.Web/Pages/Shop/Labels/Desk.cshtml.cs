using System.ComponentModel.DataAnnotations;
using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Content;
using TagPage.Labels.Layout;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>An event's pair: one label for the racket, one for the bag. Nothing is kept, so the press is answered with the file itself.</summary>
public sealed class DeskModel(LabelMaker maker, ShopClock clock, TimeProvider time) : PageModel
{
    public sealed record DeskInput : PlainInput
    {
        [Required(ErrorMessage = "Enter the desk number."), Range(1, 99999, ErrorMessage = "Enter a number from 1 to 99999.")]
        public int? Number { get; init; }

        [Required(ErrorMessage = "Enter the tension, like 24 / 23 lb."), StringLength(30, ErrorMessage = "Keep the tension within 30 characters.")]
        public string? Tension { get; init; }

        [StringLength(60, ErrorMessage = "Keep the string within 60 characters.")]
        public string? Strings { get; init; }

        [StringLength(30, ErrorMessage = "Keep the date and time within 30 characters.")]
        public string? When { get; init; }

        [StringLength(40, ErrorMessage = "Keep the name within 40 characters.")]
        public string? Name { get; init; }
    }

    [BindProperty]
    public DeskInput Input { get; set; } = new();

    [BindProperty]
    public bool Preview { get; set; }

    public IReadOnlyList<LaidLabel> Labels { get; private set; } = [];

    public void OnGet() => Input = new DeskInput
    {
        When = clock.OnTheWall(time.GetUtcNow()).ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture),
    };

    public IActionResult OnPost()
    {
        if (maker.Settings.InkFault(Input.TapeColour, Input.InkColour) is { } fault)
            this.Note([new FieldFault(nameof(Input.InkColour), fault)]);
        if (!ModelState.IsValid)
            return Page();
        var facts = new DeskFacts
        {
            Number = Input.Number!.Value.ToString(CultureInfo.InvariantCulture),
            Tension = Input.Tension!,
            Strings = Input.Strings ?? "",
            When = Input.When ?? "",
            Name = Input.Name ?? "",
        };
        Labels = [maker.Make(Purposes.DeskRacket(facts, null), Input.ToEntry()), maker.Make(Purposes.DeskBag(facts), Input.ToEntry())];
        return Preview ? Page() : File(LabelPdf.Of(maker.Pages(Labels, Input.Pages, Input.Copies!.Value)), "application/pdf");
    }
}
