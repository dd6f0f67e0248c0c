using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Tags;
using TagPage.Records.Events;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.Desk;

/// <summary>By desk number or by scan to the racket that is handed out.</summary>
public sealed class OutModel(DeskStore desks, LiveDesks live, DeskFindStore finds) : DeskPage(desks, live)
{
    [BindProperty(SupportsGet = true)]
    public string? Q { get; set; }

    public bool Nothing { get; private set; }

    public IActionResult OnGet()
    {
        if (string.IsNullOrWhiteSpace(Q))
            return Page();
        if (Number is { } number && Saved.Of(number) is not null)
            return Redirect($"{Home}/entry/{number}");
        Nothing = true;
        return Page();
    }

    private int? Number => int.TryParse(Q!.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number
        : TagCode.Read(Q).Code is { } code ? finds.ByTag(Me, Id, code)?.DeskNumber
        : null;
}
