using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Found;

/// <summary>The words of a notice about what finders did.</summary>
public sealed class FoundNoticeText(MailKind kind, string client, Language language, ShopDetails shop, ShopClock clock)
{
    private readonly NoticePhrases _say = language.Phrases.Notice;

    public sealed record Row
    {
        public long Id { get; init; }
        public FoundKind Kind { get; init; }
        public DateTimeOffset At { get; init; }
        public string Message { get; init; } = "";
        public string Reach { get; init; } = "";
        public int Number { get; init; }
        public string Player { get; init; } = "";
        public bool IsLost { get; init; }
    }

    /// <summary>The owner's words are for clients; the shop itself reads the product's.</summary>
    private bool IsOwn => kind == MailKind.FoundNotice && shop.NoticeText.Length > 0;

    public string Subject(IReadOnlyList<Row> events) =>
        kind == MailKind.FoundNotice && shop.NoticeSubject.Length > 0 ? shop.NoticeSubject.Fill(("shop", shop.Name), ("client", client))
        : events.All(e => e.Kind == FoundKind.Shown) ? _say.SubjectShown
        : _say.SubjectFinder;

    public string Body(IReadOnlyList<Row> events) => IsOwn
        ? shop.NoticeText.Fill(("client", client), ("shop", shop.Name), ("events", string.Join("\n\n", About(events))))
        : string.Join("\n\n", [.. Hello(), .. About(events), shop.Name]);

    private IEnumerable<string> Hello()
    {
        yield return _say.Hello.Fill(("client", kind == MailKind.ShopNotice ? shop.Name : client));
        if (kind == MailKind.ShopNotice)
            yield return _say.NoMail.Fill(("client", client));
    }

    /// <summary>What happened, and the cautions that go with it whoever wrote the words around it.</summary>
    private IEnumerable<string> About(IReadOnlyList<Row> events)
    {
        foreach (var e in events)
            yield return string.Join('\n', Lines(e));
        if (events.Any(e => e.Kind == FoundKind.Message))
            yield return _say.Care;
        if (kind == MailKind.FoundNotice)
            yield return _say.Reply;
        if (kind == MailKind.FoundNotice && events.Any(e => e.IsLost))
            yield return _say.Back;
    }

    private IEnumerable<string> Lines(Row e)
    {
        yield return Line(e.Kind).Fill(("time", language.Moment(clock.OnTheWall(e.At))), ("racket", Racket(e)));
        if (e.Message.Length > 0)
            yield return Unclickable.Quote(e.Message);
        if (e.Reach.Length == 0)
            yield break;
        yield return _say.Reach.Fill(("reach", Unclickable.Of(e.Reach)));
        if (kind == MailKind.FoundNotice && MailAddressAttribute.Fits(e.Reach))
            yield return _say.Answer.Fill(("link", $"{{answer {e.Id}}}"));
    }

    private string Line(FoundKind what) => what switch
    {
        FoundKind.Shown => _say.Shown,
        FoundKind.AtDesk => _say.AtDesk,
        FoundKind.HaveIt => _say.HaveIt,
        FoundKind.StillThere => _say.StillThere,
        _ => _say.Message,
    };

    private string Racket(Row e) => $"{language.Phrases.Trade.RacketInText.Fill(("number", $"{e.Number}"))} ({e.Player})";
}
