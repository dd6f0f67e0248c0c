using MimeKit;
using TagPage.Records.Money;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Papers;

namespace TagPage.Web.Mail;

/// <summary>Writes the finished email of an outbox row. Only here are private links put into its text.</summary>
public sealed class MailWriter(ShopStore shops, BillStore bills, MailSquares squares, PublicAddress address, LinkTokens keys)
{
    /// <exception cref="UndeliverableException">The shop or the addressee has no email address.</exception>
    public MimeMessage Write(OutboxStore.Row row)
    {
        var shop = shops.Get();
        var from = new MailboxAddress(shop.Name, shop.Mail ?? throw new UndeliverableException("The shop has no email address in its settings."));
        var mail = new MimeMessage
        {
            MessageId = $"{row.MessageId}@{new Uri(address.Base).Host}",
            Subject = row.Subject,
        };
        mail.From.Add(from);
        mail.ReplyTo.Add(from);
        mail.To.Add(new MailboxAddress(row.ToName ?? "", row.ToMail ?? throw new UndeliverableException("The client has no email address on file.")));
        mail.Headers.Add(HeaderId.AutoSubmitted, "auto-generated");
        if (row is { ReminderId: { } id, StopSecret: { } stop })
            AddStopHeaders(mail, StopLink(id, stop));
        var body = MailText.Read(row.Body);
        Func<MailPart, string> made = part => Made(row, part);
        // Each mail goes as text and once more as a simple page; the owner's Markdown as it is meant to look.
        var html = row.Kind is MailKind.Reminder or MailKind.ClientNotice ? MailHtml.Of(body, made) : MailHtml.OfPlain(body, made);
        mail.Body = With(row.BillId, Both(PlainMail.Of(body, made), html, squares.Of(row.Id), mail.MessageId));
        return mail;
    }

    /// <summary>Text and page; the square to pay with goes along as a picture of the page, and in words in both.</summary>
    private static MultipartAlternative Both(string text, string html, MailSquare? pay, string messageId)
    {
        if (pay is null)
            return new MultipartAlternative(new TextPart("plain") { Text = text }, new TextPart("html") { Text = html });
        var picture = new MimePart("image", "png")
        {
            Content = new MimeContent(new MemoryStream(pay.Square.Png(DotsOfModule))),
            ContentDisposition = new ContentDisposition(ContentDisposition.Inline),
            ContentTransferEncoding = ContentEncoding.Base64,
            ContentId = $"pay.{messageId}",
        };
        return new MultipartAlternative(
            new TextPart("plain") { Text = $"{text.TrimEnd()}\n\n{PlainMail.Unlinked(pay.Words)}\n" },
            new MultipartRelated { new TextPart("html") { Text = MailHtml.With(html, pay.Words, pay.Scan, picture.ContentId) }, picture });
    }

    /// <summary>Large enough for a phone that reads it from another screen.</summary>
    private const int DotsOfModule = 6;

    /// <summary>With the bill's PDF, where it brings one.</summary>
    private MimeEntity With(long? billId, MimeEntity text)
    {
        if (billId is not { } id)
            return text;
        var bill = bills.Get(Who.Shop, id) ?? throw new UndeliverableException("The bill that goes with this email is gone.");
        return new Multipart("mixed")
        {
            text,
            new MimePart("application", "pdf")
            {
                Content = new MimeContent(new MemoryStream(BillPaper.Pdf(bill))),
                ContentDisposition = new ContentDisposition(ContentDisposition.Attachment),
                ContentTransferEncoding = ContentEncoding.Base64,
                FileName = BillPaper.FileName(bill),
            },
        };
    }

    /// <summary>RFC 8058: one press stops the reminders; mail programs offer it for https only.</summary>
    private void AddStopHeaders(MimeMessage mail, string stopLink)
    {
        if (!address.IsHttps)
            return;
        mail.Headers.Add(HeaderId.ListUnsubscribe, $"<{stopLink}>");
        mail.Headers.Add(HeaderId.ListUnsubscribePost, "List-Unsubscribe=One-Click");
    }

    /// <summary>A link or digits of this mail's own record, and of no other.</summary>
    private string Made(OutboxStore.Row row, MailPart part) => (part.Kind, part.Link, part.Row) switch
    {
        (PartKind.Link, LinkPurpose.Reminder, { } id) when row.ReminderId == id && row.ReminderSecret is { } secret => ReminderLink(id, secret),
        (PartKind.Link, LinkPurpose.StopReminders, { } id) when row.ReminderId == id && row.StopSecret is { } secret => StopLink(id, secret),
        (PartKind.Link, LinkPurpose.OwnPage, { } id) when row.LinkId == id && row.LinkSecret is { } secret => OwnPageLink(id, secret),
        (PartKind.Link, LinkPurpose.Invitation, { } id) when row.InvitationId == id && row.InvitationSecret is { } secret => address.Of(InvitationLink.Path(keys.Token(LinkPurpose.Invitation, id, secret))),
        (PartKind.Link, LinkPurpose.AnswerFinder, { } id) when row.AnswerSecrets.TryGetValue(id, out var secret) => AnswerLink(id, secret),
        (PartKind.Digits, _, { } id) when row.CodeId == id && row.CodeSecret is { } secret => keys.Digits(id, secret),
        _ => throw new UndeliverableException("What this email links to is gone."),
    };

    public string ReminderLink(long id, string secret) => address.Of("/n/" + keys.Token(LinkPurpose.Reminder, id, secret));

    public string StopLink(long id, string stopSecret) => address.Of("/n/stop/" + keys.Token(LinkPurpose.StopReminders, id, stopSecret));

    public string OwnPageLink(long id, string secret) => address.Of("/my/" + keys.Token(LinkPurpose.OwnPage, id, secret));

    /// <summary>Void once the finder's words have been answered or wiped.</summary>
    public string AnswerLink(long eventId, string secret) => address.Of("/n/finder/" + keys.Token(LinkPurpose.AnswerFinder, eventId, secret));
}

/// <summary>An email that cannot be sent as things are, with the sentence for the owner.</summary>
public sealed class UndeliverableException(string sentence) : Exception(sentence);
