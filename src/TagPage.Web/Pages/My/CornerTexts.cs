using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>The words that bring a private link, in the client's language. Links are put in only where they are shown or sent.</summary>
public sealed class CornerTexts(MailWriter writer, ShopStore shops, ShopClock clock)
{
    public string Link(CornerLinkStore.Row link) => writer.CornerLink(link.Id, link.Version);

    /// <summary>With the placeholder {corner} for the link.</summary>
    public (string Subject, string Body) LinkMail(CornerLinkStore.Row link)
    {
        var language = CornerWords.Fitting(Languages.OfOrEnglish(link.Language));
        var (say, shop) = (CornerWords.Of(language).Mail, shops.Get().Name);
        return (say.LinkSubject.Fill(("shop", shop)),
            say.LinkBody.Fill(("client", link.Client), ("shop", shop), ("day", language.Day(clock.DayOf(link.ExpiresAt)))));
    }

    /// <summary>With the placeholder {code} for the digits. In the caller's transaction.</summary>
    public (string Subject, string Body) CodeMail(SqliteConnection connection, long client) => Mail(connection, client, m => (m.CodeSubject, m.CodeBody));

    /// <summary>Tells the client that what finders get was changed.</summary>
    public (string Subject, string Body) ConsentMail(SqliteConnection connection, long client, FoundChoice choice) =>
        Mail(connection, client, m => (m.ConsentSubject, m.ConsentBody), language => new MyNames(new PageLanguage(language, false)).Of(choice));

    /// <summary>Tells the address of until now that it was changed.</summary>
    public (string Subject, string Body) ContactChangedMail(SqliteConnection connection, long client) =>
        Mail(connection, client, m => (m.ContactSubject, m.ContactBody));

    public (string Subject, string Body) ForgetMail(SqliteConnection connection, long client, DateOnly day) =>
        Mail(connection, client, m => (m.ForgetSubject, m.ForgetBody), language => language.Day(day));

    private (string, string) Mail(SqliteConnection connection, long client, Func<CornerMailPhrases, (string, string)> which, Func<Language, string>? what = null)
    {
        var (name, code) = connection.QuerySingle<(string, string)>("SELECT name, language FROM client WHERE id = @client", new { client });
        var language = CornerWords.Fitting(Languages.OfOrEnglish(code));
        var (subject, body) = which(CornerWords.Of(language).Mail);
        var shop = shops.Get().Name;
        return (subject.Fill(("shop", shop)), body.Fill(("client", name), ("shop", shop), ("what", what?.Invoke(language) ?? "")));
    }

    public string LinkSms(CornerLinkStore.Row link) =>
        CornerWords.Of(Languages.OfOrEnglish(link.Language)).Mail.LinkSms.Fill(("shop", Sms.Fold(shops.Get().Name)), ("link", Link(link)));
}
