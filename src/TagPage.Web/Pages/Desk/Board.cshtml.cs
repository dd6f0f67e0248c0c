using TagPage.Records.Events;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.Desk;

/// <summary>The big screen: numbers only, since whoever walks by reads it.</summary>
public sealed class BoardModel(DeskStore desks, LiveDesks live) : DeskPage(desks, live)
{
    public const int Most = 6, MostReady = 12;

    public void OnGet()
    {
    }
}
