using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Content;
using TagPage.Labels.Layout;
using TagPage.Labels.Render.Pdf;
using TagPage.Web.Http.Forms;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>Up to three lines of any words. Nothing is kept, so the press is answered with the file itself.</summary>
public sealed class FreeModel(LabelMaker maker) : PageModel
{
    public sealed record FreeInput : PlainInput
    {
        [Required(ErrorMessage = "Enter at least one line."), StringLength(60, ErrorMessage = "Keep a line within 60 characters.")]
        public string? First { get; init; }

        [StringLength(60, ErrorMessage = "Keep a line within 60 characters.")]
        public string? Second { get; init; }

        [StringLength(60, ErrorMessage = "Keep a line within 60 characters.")]
        public string? Third { get; init; }
    }

    [BindProperty]
    public FreeInput Input { get; set; } = new();

    [BindProperty]
    public bool Preview { get; set; }

    public LaidLabel? Label { get; private set; }

    public IActionResult OnPost()
    {
        if (maker.Settings.InkFault(Input.TapeColour, Input.InkColour) is { } fault)
            this.Note([new FieldFault(nameof(Input.InkColour), fault)]);
        foreach (var (field, line) in new[] { (nameof(Input.First), Input.First), (nameof(Input.Second), Input.Second), (nameof(Input.Third), Input.Third) })
            if (LabelLetters.Fault(line) is { } letters)
                this.Note([new FieldFault(field, letters)]);
        if (!ModelState.IsValid)
            return Page();
        Label = maker.Make(Purposes.Free(new[] { Input.First, Input.Second, Input.Third }.OfType<string>()), Input.ToEntry());
        return Preview ? Page() : File(LabelPdf.Of(maker.Pages([Label], Input.Pages, Input.Copies!.Value)), "application/pdf");
    }
}
