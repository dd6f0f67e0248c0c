using TagPage.Core.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Stops;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What the folded parts of a job's form hold, on one line each.</summary>
/// <param name="Words">For the summary.</param>
/// <param name="IsUnusual">Whether it is worth a look before saving.</param>
internal sealed record FoldedWords(string Words, bool IsUnusual)
{
    public static string[] StringFields { get; } =
    [
        nameof(JobInput.MainsSuppliedBy), nameof(JobInput.CrossesSuppliedBy), nameof(JobInput.MainsPreStretch), nameof(JobInput.CrossesPreStretch),
        nameof(JobInput.Pieces), nameof(JobInput.NewString),
    ];

    public static string[] ComingFields { get; } = [nameof(JobInput.ReceivedOn), nameof(JobInput.ReceivedWhere), nameof(JobInput.LeftAtId), nameof(JobInput.CollectAtId), nameof(JobInput.Price), nameof(JobInput.Note)];

    /// <summary>"from the shop, two pieces".</summary>
    public static FoldedWords Strings(JobInput input)
    {
        var crosses = input.CrossesSuppliedBy ?? input.MainsSuppliedBy;
        var stretch = Formats.PreStretch(input.MainsPreStretch ?? 0, input.CrossesPreStretch ?? input.MainsPreStretch ?? 0);
        var words = string.Join(", ", new[]
        {
            crosses == input.MainsSuppliedBy
                ? $"from {EnglishNames.Of(crosses)}"
                : $"mains from {EnglishNames.Of(input.MainsSuppliedBy)}, crosses from {EnglishNames.Of(crosses)}",
            input.Pieces == 1 ? "one piece" : "two pieces",
            stretch is null ? null : $"pre-stretch {stretch} %",
        }.OfType<string>());
        return new FoldedWords(words, input.NewString.ToEntry().IsGiven || (input.MainsSuppliedBy, crosses) is not (Supplier.Shop, Supplier.Shop) || input.Pieces == 1 || stretch is not null);
    }

    /// <summary>"grip, rush": those that were chosen.</summary>
    public static string Extras(IEnumerable<ExtraPrice> chosen) =>
        string.Join(", ", chosen.Select(PriceWords.Of).DefaultIfEmpty("none"));

    /// <summary>"25 Nov 2026, academy desk, £24.50".</summary>
    /// <param name="input">As far as it is filled in.</param>
    /// <param name="shop">Whose currency it is.</param>
    /// <param name="today">Said as such.</param>
    /// <param name="listed">The price list knows what it costs.</param>
    /// <param name="stops">Where it may have been left.</param>
    public static FoldedWords Coming(JobInput input, ShopDetails shop, DateOnly today, bool listed, IReadOnlyList<StopRow> stops)
    {
        string? Name(long? id) => stops.FirstOrDefault(stop => stop.Id == id)?.Name;
        var (left, collect) = (Name(input.LeftAtId), input.CollectAtId is { } other ? Name(other) ?? StopWords.OwnBench : null);
        var words = string.Join(", ", new[]
        {
            input.ReceivedOn == today ? "today" : Formats.Day(input.ReceivedOn),
            string.IsNullOrWhiteSpace(input.ReceivedWhere) ? null : input.ReceivedWhere,
            left is null ? null : $"left at {left}",
            stops.Count == 0 || collect is null || collect == (left ?? StopWords.OwnBench) ? null : $"to be collected at {collect}",
            input.Price is { } price && Currencies.ToMinor(price, shop.Currency) is { } minor ? Formats.Money(minor, shop) : listed ? "price from the list" : "no price",
        }.OfType<string>());
        return new FoldedWords(words, !string.IsNullOrWhiteSpace(input.Note) || left is not null || (input.Price is null && !listed));
    }
}
