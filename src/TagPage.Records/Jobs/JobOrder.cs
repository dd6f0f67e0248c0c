using TagPage.Core.Jobs;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Frames;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>What is ordered, as far as it was typed: what cannot be, and what looks like a slip.</summary>
public sealed record JobOrder
{
    public long? MainsId { get; init; }

    /// <summary>Null for the mains'.</summary>
    public long? CrossesId { get; init; }
    public int Pieces { get; init; } = 2;
    public NewStringEntry NewString { get; init; } = new();
    public Supplier MainsSuppliedBy { get; init; }

    /// <summary>Null for the mains'.</summary>
    public Supplier? CrossesSuppliedBy { get; init; }
    public Tension? MainsTension { get; init; }

    /// <summary>Null for the mains'.</summary>
    public Tension? CrossesTension { get; init; }
    public decimal? Price { get; init; }

    public IEnumerable<Refusal> Faults(Sport sport, ShopDetails shop) => [.. Strings(), .. Tensions(sport), .. Prices(shop)];

    private IEnumerable<Refusal> Strings()
    {
        if (MainsId is null && !(NewString.IsGiven && NewString.Place != NewStringPlace.Crosses))
            yield return new MainsMissing();
        if (Pieces == 1 && AreTwo)
            yield return new OnePieceOfTwo();
        if (!NewString.IsGiven)
            yield break;
        if (string.IsNullOrWhiteSpace(NewString.Name))
            yield return new NewStringUnnamed();
        if (NewString.Material is null)
            yield return new NewStringOfNothing();
        if (NewString.GaugeMm is null)
            yield return new NewStringGaugeless();
    }

    /// <summary>Whether mains and crosses are different strings.</summary>
    private bool AreTwo => (NewString.IsGiven, NewString.Place) switch
    {
        (true, NewStringPlace.Both) => false,
        (true, NewStringPlace.Crosses) => true,
        (true, _) => CrossesId is not null,
        _ => CrossesId is not null && CrossesId != MainsId,
    };

    private IEnumerable<Refusal> Tensions(Sport sport) =>
        from typed in Typed(sport)
        where typed.Verdict == TensionVerdict.Impossible
        select new TensionImpossible(typed.Place, typed.Tension.Unit);

    private IEnumerable<(string Place, Tension Tension, TensionVerdict Verdict)> Typed(Sport sport)
    {
        if (MainsTension is { } mains)
            yield return (nameof(MainsTension), mains, TensionCheck.Of(sport, mains));
        if (CrossesTension is { } crosses)
            yield return (nameof(CrossesTension), crosses, TensionCheck.Of(sport, crosses));
    }

    private IEnumerable<Refusal> Prices(ShopDetails shop)
    {
        if (Price is { } price && Currencies.ToMinor(price, shop.Currency) is null)
            yield return new PriceUnread(shop);
    }

    /// <summary>
    /// A tension outside what is recommended for the frame is asked about each time. Where nothing is recommended, nobody knows better
    /// than the sport's usual range.
    /// </summary>
    public IReadOnlyList<Oddity> Oddities(Sport sport, JobRow? asked, FrameEntry? frame) => frame is { Range: { IsKnown: true } range }
        ? [.. Typed(sport).Where(typed => !range.Holds(typed.Tension)).Select(typed => new TensionOutOfRange(typed.Place, frame.Name, range, typed.Tension))]
        : Oddities(sport, asked);

    /// <summary>
    /// A tension outside the sport's usual range is asked about, not blocked. Tensions as in <paramref name="asked"/>,
    /// the racket's last job or this one as saved, are not asked about again.
    /// </summary>
    public IReadOnlyList<Oddity> Oddities(Sport sport, JobRow? asked) =>
        asked is not null && asked.Mains == MainsTension && asked.Crosses == (CrossesTension ?? MainsTension)
            ? []
            : [.. Typed(sport).Where(typed => typed.Verdict == TensionVerdict.Unusual).Select(typed => new TensionUnusual(typed.Place, sport, typed.Tension))];

    /// <summary>
    /// A string that the shop sells is asked about where it is said to come from the client, so that it costs nothing by a slip; but not
    /// where it came from them in <paramref name="asked"/>, too.
    /// </summary>
    /// <param name="asked">The racket's last job, or this one as saved.</param>
    /// <param name="sold">Numbers of strings.</param>
    public IEnumerable<Oddity> Brought(JobRow? asked, IReadOnlySet<long> sold)
    {
        if (IsBrought(MainsSuppliedBy, MainsId, (asked?.MainsSuppliedBy, asked?.MainsId), sold))
            yield return new SoldButBrought(nameof(MainsSuppliedBy));
        else if (IsBrought(CrossesSuppliedBy ?? MainsSuppliedBy, CrossesId ?? MainsId, (asked?.CrossesSuppliedBy, asked?.CrossesId), sold))
            yield return new SoldButBrought(nameof(CrossesSuppliedBy));
    }

    private static bool IsBrought(Supplier by, long? id, (Supplier? By, long? Id) asked, IReadOnlySet<long> sold) =>
        by == Supplier.Client && id is { } known && sold.Contains(known) && asked != (by, id);
}
