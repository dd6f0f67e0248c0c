using TagPage.Records.Events;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.Desk;

/// <summary>The big screen: numbers only, since whoever walks by reads it.</summary>
public sealed class BoardModel(DeskStore desks, LiveDesks live) : DeskPage(desks, live)
{
    public const int Most = 6, MostReady = 12;

    /// <summary>Numbers of three digits are set smaller, so that what stands beside them has room.</summary>
    public static string? Look(EntryRow entry) => entry.Number >= 100 ? "long" : null;

    public void OnGet()
    {
    }
}
