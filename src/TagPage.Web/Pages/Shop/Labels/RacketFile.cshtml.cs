using System.Text;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Render;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Labels;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>A racket's label as a file, made from what is on record: asked for again, it is the same label.</summary>
public sealed class RacketFileModel(LabelStore store, LabelMaker maker) : PageModel
{
    public IActionResult OnGet(long id, string format, long? job, [FromQuery] LabelInput input)
    {
        if (!ModelState.IsValid || store.Get(id, job) is not { } row)
            return NotFound();
        input = input with { TapeColour = row.TapeColour, InkColour = row.LabelInk, OwnLine = row.LabelLine, AgreedName = row.LabelName };
        if (maker.Make(row, input.ToEntry()).Label is not { } label)
            return NotFound();
        return format switch
        {
            "png" => File(Png.Of(LabelDots.Of(label), label.Stock.Printer.Dpi), "image/png"),
            "svg" => File(Encoding.UTF8.GetBytes(LabelSvg.Of(label, "Label")), "image/svg+xml"),
            _ => File(LabelPdf.Of(maker.Pages([label], input.Pages, input.Copies ?? 1, input.FirstFree ?? 1)), "application/pdf"),
        };
    }
}
