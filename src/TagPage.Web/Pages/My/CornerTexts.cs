using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>The words that bring a private link, in the client's language. Links in mails are made only when they are sent.</summary>
public sealed class CornerTexts(MailWriter writer, ShopStore shops, ShopClock clock)
{
    public string Link(CornerLinkStore.Row link) => writer.CornerLink(link.Id, link.Secret);

    public (string Subject, MailText Body) LinkMail(CornerLinkStore.Row link)
    {
        var language = CornerWords.Fitting(Languages.OfOrEnglish(link.Language));
        var (say, shop) = (CornerWords.Of(language).Mail, shops.Get().Name);
        return (say.LinkSubject.Fill(("shop", shop)),
            MailText.Fill(say.LinkBody, ("client", link.Client), ("shop", shop), ("day", language.Day(clock.DayOf(link.ExpiresAt))),
                ("corner", MailText.Link(LinkPurpose.Corner, link.Id))));
    }

    /// <summary>In the caller's transaction.</summary>
    public (string Subject, MailText Body) CodeMail(SqliteConnection connection, long client, long code) =>
        Mail(connection, client, m => (m.CodeSubject, m.CodeBody), _ => ("code", MailText.Digits(code)));

    /// <summary>Tells the client that what finders get was changed.</summary>
    public (string Subject, MailText Body) ConsentMail(SqliteConnection connection, long client, FoundChoice choice) =>
        Mail(connection, client, m => (m.ConsentSubject, m.ConsentBody), language => ("what", new MyNames(new PageLanguage(language, false)).Of(choice)));

    /// <summary>Tells the address of until now that it was changed.</summary>
    public (string Subject, MailText Body) ContactChangedMail(SqliteConnection connection, long client) =>
        Mail(connection, client, m => (m.ContactSubject, m.ContactBody));

    public (string Subject, MailText Body) ForgetMail(SqliteConnection connection, long client, DateOnly day) =>
        Mail(connection, client, m => (m.ForgetSubject, m.ForgetBody), language => ("what", language.Day(day)));

    private (string, MailText) Mail(SqliteConnection connection, long client, Func<CornerMailPhrases, (string, string)> which, Func<Language, (string, MailText)>? more = null)
    {
        var (name, code) = connection.QuerySingle<(string, string)>("SELECT name, language FROM client WHERE id = @client", new { client });
        var language = CornerWords.Fitting(Languages.OfOrEnglish(code));
        var (subject, body) = which(CornerWords.Of(language).Mail);
        var shop = shops.Get().Name;
        (string, MailText)[] values = [("client", name), ("shop", shop)];
        return (subject.Fill(("shop", shop)), MailText.Fill(body, more is null ? values : [.. values, more(language)]));
    }

    public string LinkSms(CornerLinkStore.Row link) =>
        PlainMail.Of(MailText.Fill(CornerWords.Of(Languages.OfOrEnglish(link.Language)).Mail.LinkSms, ("shop", Sms.Fold(shops.Get().Name)), ("link", MailText.Words(Link(link)))));
}
