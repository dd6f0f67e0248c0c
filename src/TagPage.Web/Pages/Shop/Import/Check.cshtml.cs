using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Audit;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Import;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Import;

/// <summary>What the files would do. Nothing is saved before every client who may be on file is decided.</summary>
public sealed class CheckModel(Importer importer, ImportStore store, Uploads uploads, KeptAnswers answers, ShopClock clock, SecurityLog log) : PageModel
{
    public ImportReport? Report { get; private set; }

    public ImportChoices Choices { get; private set; } = new();

    [BindProperty(SupportsGet = true)]
    public string? SettledBefore { get; set; }

    public bool HasTooManyMatches => Report?.Matches.Count > MatchAnswers.Most;

    public IActionResult OnGet(string key)
    {
        var proposed = new ImportChoices { Others = OtherMatches.MergeSure };
        var page = Check(key, proposed);
        return Report is not null && answers.ByLine(key, Report.Matches) is { Count: > 0 } known ? Check(key, proposed with { ByLine = known }) : page;
    }

    /// <summary>Goes back to send corrected files, without losing who is who.</summary>
    public IActionResult OnPostAgain(string key)
    {
        if (Check(key, Chosen()) is not PageResult)
            return NotFound();
        answers.Keep(key, Report!.Matches, Choices);
        return Redirect($"/shop/import?answers={key}{(Choices.SettledBefore is { } day ? $"&settledBefore={DayField.Of(day)}" : "")}");
    }

    /// <summary>Shows what the choices would do.</summary>
    public IActionResult OnPostCount(string key) => Check(key, Chosen());

    public IActionResult OnPost(string key)
    {
        if (store.IsDone(key))
            return Redirect("/shop");
        if (ImportFiles.Of(uploads, key) is not { } files)
            return NotFound();
        if (!Take(Chosen()))
            return Check(key, Choices);
        (Report, var unsafeBecause) = importer.BackUpAndImport(files, Choices, key);
        if (unsafeBecause is { } fault)
        {
            ModelState.AddModelError("", BackupWords.NotFirst(fault));
            return Page();
        }
        if (!Report.IsClean)
        {
            foreach (var match in Report.Undecided.Take(MatchAnswers.Most))
                ModelState.AddModelError(MatchAnswers.FieldOf(match), $"Say who {match.Client.Name} is.");
            return Page();
        }
        uploads.Remove(key);
        log.Note(HttpContext, AuditEvent.FilesBroughtIn, detail: Report.Summary);
        this.Say($"Brought in: {Report.Summary}.");
        return Redirect("/shop");
    }

    private IActionResult Check(string key, ImportChoices choices)
    {
        if (ImportFiles.Of(uploads, key) is not { } files)
            return NotFound();
        Take(choices);
        Report = importer.Check(files, Choices);
        return Page();
    }

    /// <summary>False where the day does not fit, which then counts as none.</summary>
    private bool Take(ImportChoices choices)
    {
        var wrong = SettledDay.Wrong(SettledBefore, clock.Today);
        if (wrong is not null)
            ModelState.AddModelError(nameof(SettledBefore), wrong);
        Choices = choices with { SettledBefore = wrong is null ? DayField.Read(SettledBefore) : null };
        return wrong is null;
    }

    private ImportChoices Chosen() => new() { ByLine = MatchAnswers.Of(Request.Form) };
}
