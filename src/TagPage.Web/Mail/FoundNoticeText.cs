using TagPage.Core.Text;
using TagPage.Records.LostAndFound;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Mail;

/// <summary>The words of a notice about what finders did.</summary>
public sealed class FoundNoticeText(MailKind kind, string client, Language language, ShopDetails shop, ShopClock clock)
{
    private readonly NoticePhrases _say = language.Phrases.Notice;

    /// <summary>The owner's words are for clients; the shop itself reads the product's.</summary>
    private bool IsOwn => kind == MailKind.FoundNotice && shop.Notice.Text.Length > 0;

    public string Subject(IReadOnlyList<FoundNoticeRow> events) =>
        kind == MailKind.FoundNotice && shop.Notice.Subject.Length > 0 ? shop.Notice.Subject.Fill(("shop", shop.Name), ("client", client))
        : events.All(e => e.Kind == FoundKind.Shown) ? _say.SubjectShown
        : _say.SubjectFinder;

    public MailText Body(IReadOnlyList<FoundNoticeRow> events) => IsOwn
        ? MailText.Fill(shop.Notice.Text, ("client", client), ("shop", shop.Name), ("events", MailText.Join("\n\n", About(events))))
        : MailText.Join("\n\n", [.. Hello(), .. About(events), shop.Name]);

    private IEnumerable<MailText> Hello()
    {
        yield return MailText.Fill(_say.Hello, ("client", kind == MailKind.ShopNotice ? shop.Name : client));
        if (kind == MailKind.ShopNotice)
            yield return MailText.Fill(_say.NoMail, ("client", client));
    }

    /// <summary>What happened, and the cautions that go with it whoever wrote the words around it.</summary>
    private IEnumerable<MailText> About(IReadOnlyList<FoundNoticeRow> events)
    {
        foreach (var e in events)
            yield return MailText.Join("\n", Lines(e));
        if (events.Any(e => e.Message.Length > 0))
            yield return MailText.Words(_say.Care);
        if (kind == MailKind.FoundNotice)
            yield return MailText.Words(_say.Reply);
        if (kind == MailKind.FoundNotice && events.Any(e => e.IsLost))
            yield return MailText.Words(_say.Back);
    }

    private IEnumerable<MailText> Lines(FoundNoticeRow e)
    {
        yield return MailText.Fill(Line(e.Kind), ("time", language.Moment(clock.OnTheWall(e.At))), ("racket", Racket(e)));
        if (e.Message.Length > 0)
            yield return MailText.Quoted(Unclickable.Of(e.Message));
        if (e.Contact.Length == 0)
            yield break;
        yield return MailText.Words(_say.Reach);
        yield return MailText.Quoted(Unclickable.Of(e.Contact));
        if (kind == MailKind.FoundNotice && MailAddressAttribute.Fits(e.Contact))
            yield return MailText.Fill(_say.Answer, ("link", MailText.Link(LinkPurpose.AnswerFinder, e.Id)));
    }

    private string Line(FoundKind what) => what switch
    {
        FoundKind.Shown => _say.Shown,
        FoundKind.AtDesk => _say.AtDesk,
        FoundKind.HaveIt => _say.HaveIt,
        FoundKind.StillThere => _say.StillThere,
        _ => _say.Message,
    };

    private string Racket(FoundNoticeRow e) => $"{language.Phrases.Trade.RacketInText.Fill(("number", $"{e.Number}"))} ({e.Player})";
}
