using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Web.Csv;
using TagPage.Web.Http.Forms;
using TagPage.Web.Import;

namespace TagPage.Web.Pages.Shop.Import;

[UploadLimit(MostFiles * (long)SheetText.MostBytes + 1_000_000)]
public sealed class IndexModel(Uploads uploads, KeptAnswers answers, ShopClock clock) : PageModel
{
    /// <summary>A full set.</summary>
    private const int MostFiles = 6;

    public static IReadOnlyList<Sheet> Sheets => ImportSheets.All;

    [BindProperty]
    public IFormFileCollection? Files { get; set; }

    /// <summary>The key of files that these are sent in place of, whose answers are kept; null for none.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Answers { get; set; }

    public bool HasAnswers => answers.AreThere(Answers);

    /// <summary>A day, as the field sends it.</summary>
    [BindProperty(SupportsGet = true)]
    public string? SettledBefore { get; set; }

    /// <summary>Proposed: what was strung a month ago is no longer waiting to be collected.</summary>
    public void OnGet() => SettledBefore ??= DayField.Of(clock.Today.AddDays(-ImportLimits.DaysUntilSettled));

    public async Task<IActionResult> OnPost()
    {
        var files = await Read();
        if (SettledDay.Wrong(SettledBefore, clock.Today) is { } wrong)
            ModelState.AddModelError(nameof(SettledBefore), wrong);
        if (!ModelState.IsValid)
            return Page();
        var key = uploads.Keep(files.ByName);
        answers.HandOn(Answers, key);
        return Redirect($"/shop/import/check/{key}{(DayField.Read(SettledBefore) is { } day ? $"?settledBefore={DayField.Of(day)}" : "")}");
    }

    private async Task<ImportFiles> Read()
    {
        var files = new ImportFiles();
        foreach (var file in Files ?? new FormFileCollection())
        {
            if (file.Length > SheetText.MostBytes)
                Refuse(file, $"has more than {SheetText.MostBytes / 1_000_000} MB. Split it and send the parts one after the other.");
            else if (!Sheets.Any(s => s.IsNamed(file.FileName)))
                Refuse(file, $"is not a known file name. Known names are {string.Join(", ", Sheets.Select(s => s.File))}.");
            else if (!files.TryAdd(file.FileName, await Bytes(file)))
                Refuse(file, "was chosen twice. Choose one of the two.");
        }
        if (Files is null or { Count: 0 })
            ModelState.AddModelError(nameof(Files), "Choose the files to bring in.");
        return files;
    }

    private void Refuse(IFormFile file, string sentence) =>
        ModelState.AddModelError(nameof(Files), $"“{Kinds.Clip(Path.GetFileName(file.FileName))}” {sentence}");

    private static async Task<byte[]> Bytes(IFormFile file)
    {
        using var stream = new MemoryStream((int)file.Length);
        await file.CopyToAsync(stream);
        return stream.ToArray();
    }
}
