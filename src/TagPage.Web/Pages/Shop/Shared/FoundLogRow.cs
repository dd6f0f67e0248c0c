using TagPage.Records.LostAndFound;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Shared;

/// <summary>One line of the log in words.</summary>
/// <param name="Row">What is on file.</param>
/// <param name="At">On the shop's clock.</param>
/// <param name="NamesRacket">False on the racket's own card.</param>
public sealed record FoundLogRow(FoundLogStore.Row Row, DateTimeOffset At, bool NamesRacket)
{
    public string When => Languages.English.Moment(At);

    public string What => Row.Kind switch
    {
        FoundKind.Shown => "Contact details shown",
        FoundKind.AtDesk => "“It is at the desk here”",
        FoundKind.HaveIt => "“I have it with me”",
        FoundKind.StillThere => "“It is still lying where I saw it”",
        _ => "A message",
    };

    public string Told => Row switch
    {
        { NoticeState: "Sent", IsToShop: true } => "emailed to the shop: the client has no email address",
        { NoticeState: "Sent" } => "the client was told by email",
        { NoticeState: "Queued" } => "the email is waiting to go",
        { NoticeState: "Leaving" } => "the email is on its way",
        { NoticeState: "MaybeSent" } => "the email may have been sent: the mail server never said so",
        { NoticeState: "Failed" } => "the email could not be sent",
        _ => "",
    };
}
