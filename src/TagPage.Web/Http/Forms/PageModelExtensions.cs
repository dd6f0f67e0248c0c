using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Storage;
using TagPage.Web.Words;

namespace TagPage.Web.Http.Forms;

public static class PageModelExtensions
{
    internal const string Questions = "Questions";

    private const string Line = "StatusLine";
    private const string Next = "StatusNext";
    private const string NextAddress = "StatusNextAddress";
    private const string UndoAddress = "StatusUndoAddress";

    /// <summary>How every form post ends: absent is 404, a refusal goes to its field and the page is shown again.</summary>
    /// <param name="page">Its view shows the form.</param>
    /// <param name="outcome">What became of the write.</param>
    /// <param name="done">Says what was done and goes on, given the record's id.</param>
    /// <param name="storedVersion">Of a record that was changed: see <see cref="Refuse(PageModel, Outcome.Refused, int)"/>.</param>
    public static IActionResult After(this PageModel page, Outcome outcome, Func<long, IActionResult> done, int? storedVersion = null) => outcome switch
    {
        Outcome.Done { Id: var id } => done(id),
        Outcome.Refused refused => storedVersion is { } version ? page.Refuse(refused, version) : page.Refuse(refused),
        _ => page.NotFound(),
    };

    /// <summary>Puts a refusal, in the shop's words, beside its field; the page is shown again with all that was typed.</summary>
    public static IActionResult Refuse(this PageModel page, Outcome.Refused refused) =>
        page.Refuse(new FieldFault(refused.Why.Field, ShopRefusals.Of(refused.Why)));

    public static IActionResult Refuse(this PageModel page, FieldFault fault)
    {
        page.ModelState.AddModelError(fault.Field.Length == 0 ? "" : "Input." + fault.Field, fault.Sentence);
        return page.Page();
    }

    /// <summary>The same for all that is wrong with an input, before anything is tried; the page is then shown because it does not hold.</summary>
    public static void Note(this PageModel page, IEnumerable<Refusal> faults) =>
        page.Note(faults.Select(why => new FieldFault(why.Field, ShopRefusals.Of(why))));

    /// <summary>Puts each fault beside its field, where nothing is wrong with what was typed there already; the page is then shown because its input does not hold.</summary>
    public static void Note(this PageModel page, IEnumerable<FieldFault> faults)
    {
        foreach (var fault in faults.Where(fault => !page.HasUnread(fault.Field)))
            page.Refuse(fault);
    }

    // What cannot be read as a number or a day is not missing.
    private static bool HasUnread(this PageModel page, string field) =>
        page.ModelState.TryGetValue("Input." + field, out var entry) && entry.Errors.Count > 0 && !string.IsNullOrEmpty(entry.AttemptedValue);

    /// <summary>
    /// The same for a form that changes a record: once told that somebody else saved it, the owner's next press may
    /// replace the version now stored.
    /// </summary>
    public static IActionResult Refuse(this PageModel page, Outcome.Refused refused, int storedVersion)
    {
        if (refused == Outcome.Stale)
            page.ModelState.SetModelValue("Input.Version", storedVersion, storedVersion.ToString(CultureInfo.InvariantCulture));
        return page.Refuse(refused);
    }

    /// <summary>
    /// Asks in the shop's words about what looks like a mistake, beside each field and with one tick box for all. False when there is nothing
    /// to ask, or when exactly this was asked before and ticked.
    /// </summary>
    /// <param name="page">Its view has a <c>&lt;confirm /&gt;</c> within the form.</param>
    /// <param name="oddities">What is odd about the input.</param>
    /// <param name="confirmed">What the form posted as Input.Confirmed.</param>
    public static bool Asks(this PageModel page, IEnumerable<Oddity> oddities, string? confirmed)
    {
        var questions = oddities.Select(odd => (odd.Field, Sentence: ShopQuestions.Of(odd))).ToList();
        var asked = string.Join(' ', questions.Select(q => q.Sentence));
        if (asked == (confirmed ?? ""))
            return false;
        foreach (var (field, sentence) in questions)
            page.ModelState.AddModelError(field.StartsWith('[') ? "Input" + field : "Input." + field, sentence);
        if (questions.Count > 0)
            page.ViewData[Questions] = asked;
        return questions.Count > 0;
    }

    /// <summary>Of a form that goes elsewhere before it is saved: what is still missing is no fault, what was typed wrong is.</summary>
    /// <param name="page">Shows the form again.</param>
    /// <param name="asked">Fields that it asks for itself; null for all. What is wrong with others is told where they can be changed.</param>
    public static void ForgiveMissing(this PageModel page, params string[]? asked)
    {
        foreach (var (name, entry) in page.ModelState.FindKeysWithPrefix("Input"))
        {
            if (!string.IsNullOrWhiteSpace(entry.AttemptedValue) && (asked is null || asked.Contains(name["Input.".Length..])))
                continue;
            entry.Errors.Clear();
            entry.ValidationState = ModelValidationState.Skipped;
        }
    }

    /// <summary>Forgets what was typed, so that fields show what the page has made of it.</summary>
    public static void ShowAnew(this PageModel page, string field)
    {
        foreach (var key in page.ModelState.FindKeysWithPrefix(field).Select(entry => entry.Key).ToList())
            page.ModelState.Remove(key);
    }

    /// <summary>Shows on the next page what was done.</summary>
    public static void Say(this PageModel page, string sentence) => page.TempData[Line] = sentence;

    /// <summary>Says what was done on the page that comes next.</summary>
    public static IActionResult GoOn(this PageModel page, string address, string sentence)
    {
        page.Say(sentence);
        return new RedirectResult(address);
    }

    /// <summary>The same with a link to what is usually done next.</summary>
    public static IActionResult GoOn(this PageModel page, string address, string sentence, string next, string nextAddress)
    {
        page.Say(sentence, next, nextAddress);
        return new RedirectResult(address);
    }

    /// <summary>Says what was done and links to what is usually done next.</summary>
    public static void Say(this PageModel page, string sentence, string next, string nextAddress)
    {
        page.Say(sentence);
        page.TempData[Next] = next;
        page.TempData[NextAddress] = nextAddress;
    }

    /// <summary>What was just done can be taken back by one press, beside the sentence that says so.</summary>
    /// <param name="page">That did it.</param>
    /// <param name="address">Where the press is sent, with all it needs in its query.</param>
    public static void CanBeUndone(this PageModel page, string address) => page.TempData[UndoAddress] = address;

    /// <summary>Whether the page that comes next offers it; it still does after this was asked.</summary>
    public static bool HasUndo(this Microsoft.AspNetCore.Mvc.ViewFeatures.ITempDataDictionary tempData) => tempData.Peek(UndoAddress) is not null;

    public static string? StatusUndo(this Microsoft.AspNetCore.Mvc.ViewFeatures.ITempDataDictionary tempData) => tempData[UndoAddress] as string;

    public static string? StatusLine(this Microsoft.AspNetCore.Mvc.ViewFeatures.ITempDataDictionary tempData) => tempData[Line] as string;

    public static (string Words, string Address)? StatusNext(this Microsoft.AspNetCore.Mvc.ViewFeatures.ITempDataDictionary tempData) =>
        tempData[Next] is string words && tempData[NextAddress] is string address ? (words, address) : null;
}
