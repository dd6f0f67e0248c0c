using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Records.StringingLists;
using TagPage.Web.Csv;
using TagPage.Web.Http.Forms;
using TagPage.Web.Import;
using TagPage.Web.StringingLists;

namespace TagPage.Web.Pages.Shop.StringingLists;

[UploadLimit(SheetText.MostBytes + 1_000_000L)]
public sealed class IndexModel(ListDesk desk, StringingListStore store, KeptAnswers answers, ShopClock clock) : PageModel
{
    [BindProperty]
    public IFormFile? Sent { get; set; }

    /// <summary>The key of a list that this one is sent in place of, whose answers are kept; null for none.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Answers { get; set; }

    public bool HasAnswers => answers.AreThere(Answers);

    public IReadOnlyList<StringingListRow> Lists => field ??= store.List();

    public DateOnly DayOf(StringingListRow list) => clock.DayOf(list.MadeAt);

    public async Task<IActionResult> OnPost()
    {
        if (Sent is not { Length: > 0 })
            return Refuse("Choose the list to bring in.");
        if (Sent.Length > SheetText.MostBytes)
            return Refuse($"The file has more than {SheetText.MostBytes / 1_000_000} MB. Split it and send the parts one after the other.");
        using var stream = new MemoryStream((int)Sent.Length);
        await Sent.CopyToAsync(stream);
        var (key, wrong) = desk.Keep(Sent.FileName, stream.ToArray(), Answers);
        return key is null ? Refuse(wrong!) : Redirect($"/shop/import/list/columns/{key}");
    }

    private PageResult Refuse(string sentence)
    {
        ModelState.AddModelError(nameof(Sent), sentence);
        return Page();
    }
}
