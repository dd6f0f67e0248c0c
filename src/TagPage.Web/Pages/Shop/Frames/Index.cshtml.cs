using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Frames;
using TagPage.Web.Import;

namespace TagPage.Web.Pages.Shop.Frames;

/// <summary>The catalogue of frames, and the same as a file that another shop can bring in.</summary>
public sealed class IndexModel(FrameStore store) : PageModel
{
    public IReadOnlyList<FrameStore.Row> Frames { get; private set; } = [];

    public void OnGet() => Frames = store.List();

    public IActionResult OnGetCsv() => File(FrameSheet.Write(store.List()), "text/csv", FrameSheet.File);
}
