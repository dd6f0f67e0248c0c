using TagPage.Records.Storage;

namespace TagPage.Records.Stock;

/// <summary>What is left grew out of all bounds: a number was mistyped.</summary>
public sealed record StockTooLong() : Refusal("Amount");
