using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Mail;
using TagPage.Web.Pages.Nudge;
using TagPage.Web.Pages.Shop.Bench;
using TagPage.Web.Pages.Shop.Nudges;

namespace TagPage.Web.Demo;

/// <summary>A reminder that can be tried: the newest one that still waits for an answer, or a new one to who is due most.</summary>
public sealed class DemoReminder(NudgeListStore list, NudgeStore nudges, NewNudgeStore news, DueStore due, LinkKeys keys)
{
    /// <summary>Path of its private page; null where nobody is due.</summary>
    public string? Path() => (Open() ?? Make()) is { } token ? "/n/" + token : null;

    private string? Open() => list.Newest()
        .Where(n => n.Answered < n.Rackets)
        .Select(n => keys.Token(LinkPurpose.Nudge, n.Id, n.Secret))
        .FirstOrDefault(token => nudges.Of(token) is not null);

    private string? Make()
    {
        // The household with most to answer shows most.
        foreach (var household in due.List(withUnseen: false).Households.OrderByDescending(h => h.Rackets.Count))
            if (news.Add(household.Client.ClientId, new NewNudgeInput { FormKey = FormKey.New() }) is Outcome.Done done)
                return keys.Token(LinkPurpose.Nudge, done.Id, nudges.Get(done.Id)!.Secret);
        return null;
    }
}
