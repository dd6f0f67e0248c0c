using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>Amounts on file keep their number and would read as another currency's.</summary>
public sealed record CurrencyChanges(string Was, string Is) : Oddity(nameof(ShopEntry.Currency));
