using TagPage.Core.Text;
using TagPage.Labels.Papers;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Papers;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Mail;

/// <param name="Words">The same as the square, for whoever pays otherwise.</param>
/// <param name="Scan">What to do with the square.</param>
/// <param name="Square">Itself.</param>
public sealed record MailSquare(string Words, string Scan, TransferQr Square);

/// <summary>The square to pay with that goes with an email on rackets that are ready, by what is open as it is sent.</summary>
public sealed class MailSquares(ReadyStore ready, PriceListStore prices, ShopStore shops)
{
    /// <summary>Null for other emails, where nothing is open, and where the shop has no account that a square can name.</summary>
    public MailSquare? Of(long mail)
    {
        if (ready.ToldBy(Who.Shop, mail) is not { Count: > 0 } jobs || JobMails.Open(jobs) is not { } open)
            return null;
        var (shop, tickets) = (shops.Get(), string.Join(", ", jobs.Where(job => job.PaidOn is null).Select(job => job.Ticket)));
        var payee = Payment.Payee(shop, prices.Get());
        if (Payment.Square(payee, shop.Currency, open, tickets, Payment.ReferenceOf(tickets)) is not { } square)
            return null;
        var language = OwnPageWords.Fitting(Languages.OfOrEnglish(jobs[0].ClientLanguage));
        var (say, amount) = (OwnPageWords.Of(language).Home, language.Money(open, shop));
        return new MailSquare(TransferWords.Of(say, amount, payee, tickets), say.PayByPhone.Fill(("amount", amount)), square);
    }
}
