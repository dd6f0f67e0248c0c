using TagPage.Records.Events;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.Desk;

/// <summary>All that is at the desk on paper, with lines for what comes after.</summary>
public sealed class SheetModel(DeskStore desks, LiveDesks live) : DeskPage(desks, live)
{
    public const int BlankLines = 12;

    public void OnGet()
    {
    }
}
