using TagPage.Core.Jobs;
using TagPage.Records.Shop;

namespace TagPage.Records.Jobs;

/// <summary>An ordered job as its columns take it.</summary>
internal record JobValues
{
    public long MainsId { get; }
    public long CrossesId { get; }
    public string MainsSuppliedBy { get; }
    public string CrossesSuppliedBy { get; }
    public decimal MainsTension { get; }
    public decimal CrossesTension { get; }
    public string TensionUnit { get; }
    public int MainsPreStretch { get; }
    public int CrossesPreStretch { get; }
    public int Pieces { get; }
    public DateOnly ReceivedOn { get; }
    public string ReceivedWhere { get; }
    public DateOnly? PromisedFor { get; }
    public long? PriceMinor { get; }
    public string Note { get; }

    public JobValues(JobEntry input, StringPickStore.Picked strings, ShopDetails shop)
    {
        MainsId = strings.MainsId;
        CrossesId = strings.CrossesId;
        MainsSuppliedBy = input.MainsSuppliedBy.ToString();
        CrossesSuppliedBy = (input.CrossesSuppliedBy ?? input.MainsSuppliedBy).ToString();
        MainsTension = input.MainsTension;
        CrossesTension = input.CrossesTension ?? MainsTension;
        TensionUnit = input.TensionUnit.ToString();
        MainsPreStretch = input.MainsPreStretch ?? 0;
        CrossesPreStretch = input.CrossesPreStretch ?? MainsPreStretch;
        Pieces = input.Pieces;
        ReceivedOn = input.ReceivedOn;
        ReceivedWhere = input.ReceivedWhere ?? "";
        PromisedFor = input.PromisedFor;
        PriceMinor = input.Price is { } price ? Currencies.ToMinor(price, shop.Currency) : null;
        Note = input.Note ?? "";
    }
}

/// <summary>A new job as its columns take it.</summary>
internal sealed record NewJobValues(long RacketId, JobEntry Input, StringPickStore.Picked Strings, ShopDetails Shop)
    : JobValues(Input, Strings, Shop);

/// <summary>A changed job as its columns take it.</summary>
/// <param name="Id">Of the job.</param>
/// <param name="Changed">As entered.</param>
/// <param name="Strings">As picked.</param>
/// <param name="Shop">For its currency.</param>
/// <param name="Now">The state it is in.</param>
/// <param name="IsMore">Something beside its columns changes, too.</param>
internal sealed record ChangedJobValues(long Id, ChangedJobEntry Changed, StringPickStore.Picked Strings, ShopDetails Shop, JobState Now, bool IsMore)
    : JobValues(Changed, Strings, Shop)
{
    public int Version => Changed.Version;
    public string State => Changed.StateFrom(Now).ToString();
    public DateOnly? StrungOn => Changed.StrungOn;
    public string StrungBy => Changed.StrungBy ?? "";
    public string Machine => Changed.Machine ?? "";
    public DateOnly? CollectedOn => Changed.CollectedOn;
    public DateOnly? EndedOn => Changed.EndedOn;
    public string? EndedHow => Changed.EndedHow?.ToString();
}
