using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Core.Tags;

namespace TagPage.Web.Tests.Cast;

/// <summary>Ilse, who found a racket and never saw this shop before.</summary>
public static class Finder
{
    public static Task<WebPage> FoundPage(this Visitor finder, TagCode code, string lang = "") => finder.Open($"/t/{code}/found{lang}");

    public static async Task<WebPage> AskForContact(this Visitor finder, TagCode code) =>
        await finder.PressContact(await finder.FoundPage(code));

    public static Task<WebPage> PressContact(this Visitor finder, WebPage page) => finder.Send(page, page.Form("/contact"));

    public static async Task<WebPage> Says(this Visitor finder, TagCode code, string what = "AtDesk", string place = "Front desk of the hall")
    {
        var page = await finder.FoundPage(code);
        return await finder.Send(page, page.Form("/answer"), ("says", what), ("Input.Place", what == "HaveIt" ? "" : place));
    }

    public static async Task<WebPage> Writes(this Visitor finder, TagCode code, string message, string reach = "")
    {
        var page = await finder.FoundPage(code);
        return await finder.Send(page, page.Form("/message"), ("Input.Message", message), ("Input.Reach", reach));
    }

    /// <summary>The form that is sent to an address with this end; with a "?" in it the question counts too, but for the language.</summary>
    public static IHtmlFormElement Form(this WebPage page, string end) => page.Document.QuerySelectorAll<IHtmlFormElement>("main form").Single(f => GoesTo(f, end));

    public static bool HasForm(this WebPage page, string end) => page.Document.QuerySelectorAll<IHtmlFormElement>("main form").Any(f => GoesTo(f, end));

    private static bool GoesTo(IHtmlFormElement form, string end)
    {
        var action = System.Text.RegularExpressions.Regex.Replace(form.GetAttribute("action")?.Split('#')[0] ?? "", @"\blang=[a-z]+&", "");
        return (end.Contains('?', StringComparison.Ordinal) ? action : action.Split('?')[0]).EndsWith(end, StringComparison.Ordinal);
    }

    /// <summary>Odalys agrees to something; Pim's racket may be lost.</summary>
    public static void Agree(this OnFile records, string choice, bool lost = true, bool always = false, bool mail = false)
    {
        records.Change("UPDATE client SET found_choice = @choice, found_choice_on = '2026-11-01', found_always = @always, found_shows_mail = @mail", new { choice, always, mail });
        records.Change("UPDATE racket SET lost_since = @since, lost_note = @note", new { since = lost ? "2026-11-20" : null, note = lost ? "Left at court 3, thank you!" : "" });
    }

    public static long Events(this OnFile records, string where = "1 = 1") => records.Count("found_event", where);
}
