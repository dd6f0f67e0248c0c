using TagPage.Records.Events;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Desk;

/// <summary>What lies at the desk at night, to be looked through or printed. The shop reads names, a helper what the desk shows.</summary>
public sealed class LeftModel(DeskStore desks, LiveDesks live) : DeskPage(desks, live)
{
    public string Whose(EntryRow entry) => User.IsHelper() ? entry.Whose : entry.Player;

    public void OnGet()
    {
    }
}
