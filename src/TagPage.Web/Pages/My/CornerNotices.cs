using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;
using TagPage.Web.Pages.Nudge;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>Mails that answer a client: the owner's own words, or the product's in the client's language.</summary>
public sealed class CornerNotices(ShopStore shops)
{
    private sealed record To(string Name, string? Mail, string Language);

    /// <summary>"We got your request"; null where the client has no mail address. In the caller's transaction.</summary>
    public (string Subject, string Body)? Received(SqliteConnection connection, long client, string player, int number)
    {
        var (name, mail, code) = connection.QuerySingle<(string, string?, string)>("SELECT name, mail, language FROM client WHERE id = @client", new { client });
        if (mail is null || shops.Get().Mail is null)
            return null;
        var language = CornerWords.Fitting(Languages.OfOrEnglish(code));
        var say = CornerWords.Of(language).Mail;
        return Filled(say.ReceivedSubject, say.ReceivedBody, language, new To(name, mail, code), player, number);
    }

    private (string, string) Filled(string subject, string body, Language language, To to, string player, int number)
    {
        var racket = language.Phrases.Trade.RacketOf.Fill(("player", GivenNames.Of([player])[player]), ("number", $"{number}"));
        var shop = shops.Get().Name;
        return (subject.Fill(("shop", shop), ("racket", racket)), body.Fill(("client", to.Name), ("shop", shop), ("racket", racket)));
    }
}
