using System.Globalization;
using System.Text.RegularExpressions;
using MimeKit;
using TagPage.Web.Data;
using TagPage.Web.Hosting;

namespace TagPage.Web.Mail;

/// <summary>Makes the finished mail of an outbox row. Only here do links with power come into its text.</summary>
public sealed partial class MailWriter(ShopStore shops, PublicAddress address, LinkKeys keys)
{
    /// <exception cref="UndeliverableException">The shop or the addressee has no mail address.</exception>
    public MimeMessage Write(OutboxStore.Row row)
    {
        var shop = shops.Get();
        var from = new MailboxAddress(shop.Name, shop.Mail ?? throw new UndeliverableException("The shop has no mail address in its settings."));
        var mail = new MimeMessage
        {
            MessageId = $"{row.MessageId}@{new Uri(address.Base).Host}",
            Subject = row.Subject,
        };
        mail.From.Add(from);
        mail.ReplyTo.Add(from);
        mail.To.Add(new MailboxAddress(row.ToName ?? "", row.ToMail ?? throw new UndeliverableException("The client has no mail address on file.")));
        mail.Headers.Add(HeaderId.AutoSubmitted, "auto-generated");
        if (row is { NudgeId: { } id, NudgeVersion: { } version })
            AddStopHeaders(mail, StopLink(id, version));
        var text = new TextPart("plain") { Text = WithLinks(row) };
        // Each mail goes as text and once more as a simple page; the owner's Markdown as it is meant to look.
        var html = row.Kind is MailKind.Nudge or MailKind.ClientNotice ? MailHtml.Of(text.Text) : MailHtml.OfText(text.Text, address.Base);
        mail.Body = new MultipartAlternative(text, new TextPart("html") { Text = html });
        return mail;
    }

    /// <summary>RFC 8058: one press stops the reminders; its mail programs only trust https.</summary>
    private void AddStopHeaders(MimeMessage mail, string stopLink)
    {
        if (!address.IsHttps)
            return;
        mail.Headers.Add(HeaderId.ListUnsubscribe, $"<{stopLink}>");
        mail.Headers.Add(HeaderId.ListUnsubscribePost, "List-Unsubscribe=One-Click");
    }

    private string WithLinks(OutboxStore.Row row) => row is { NudgeId: { } id, NudgeVersion: { } version }
        ? row.Body.Replace("{link}", NudgeLink(id, version), StringComparison.Ordinal).Replace("{stop}", StopLink(id, version), StringComparison.Ordinal)
        : row is { LinkId: { } link, LinkVersion: { } linkVersion }
            ? row.Body.Replace("{corner}", CornerLink(link, linkVersion), StringComparison.Ordinal)
        : row is { CodeId: { } code, CodeSalt: { } salt }
            ? row.Body.Replace("{code}", keys.Digits(code, salt), StringComparison.Ordinal)
        : row.Kind == MailKind.FoundNotice
            ? AnswerMark().Replace(row.Body, mark => AnswerLink(long.Parse(mark.Groups[1].Value, CultureInfo.InvariantCulture)))
            : row.Body;

    public string NudgeLink(long id, int version) => address.Of("/n/" + keys.Token(LinkPurpose.Nudge, id, version));

    public string StopLink(long id, int version) => address.Of("/n/stop/" + keys.Token(LinkPurpose.StopNudges, id, version));

    public string CornerLink(long id, int version) => address.Of("/my/" + keys.Token(LinkPurpose.Corner, id, version));

    /// <summary>Worth nothing any more once the finder's words are answered or wiped.</summary>
    public string AnswerLink(long eventId) => address.Of("/n/finder/" + keys.Token(LinkPurpose.AnswerFinder, eventId, 1));

    [GeneratedRegex(@"\{answer (\d{1,18})\}")]
    private static partial Regex AnswerMark();
}

/// <summary>A mail that cannot go as things stand, with the sentence for the owner.</summary>
public sealed class UndeliverableException(string sentence) : Exception(sentence);
