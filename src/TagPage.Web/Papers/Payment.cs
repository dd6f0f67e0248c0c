using TagPage.Labels.Papers;

namespace TagPage.Web.Papers;

/// <summary>The square that pays, where there is one: an account and euros.</summary>
public static class Payment
{
    /// <param name="iban">The shop's; null without an account.</param>
    /// <param name="name">Whose account it is.</param>
    /// <param name="currency">Of the amount.</param>
    /// <param name="minor">What is to be paid; nothing where it is not above zero.</param>
    /// <param name="text">What it is for.</param>
    public static TransferQr? Square(string? iban, string name, string currency, long minor, string text) =>
        iban is null || currency != "EUR" || minor is < TransferQr.LeastCents or > TransferQr.MostCents ? null : TransferQr.Of(iban, name, minor, text);
}
