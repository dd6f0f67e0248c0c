using TagPage.Core.Money;
using TagPage.Core.Text;
using TagPage.Records.Money;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Papers;

/// <summary>What a square to pay with says, for whoever reads it on the very phone that pays.</summary>
internal static class TransferWords
{
    /// <param name="say">In whose language.</param>
    /// <param name="amount">As it reads there.</param>
    /// <param name="payee">With an account.</param>
    /// <param name="tickets">Their numbers, parted by commas.</param>
    public static string Of(OwnPageHomePhrases say, string amount, BillSender payee, string tickets) => say.PayByTransfer.Fill(
        ("amount", amount), ("name", payee.AccountName), ("account", Iban.Shown(payee.Iban!)), ("text", Payment.Names(payee, tickets, Payment.ReferenceOf(tickets))));
}
