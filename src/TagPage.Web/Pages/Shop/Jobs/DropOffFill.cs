using TagPage.Core.Jobs;
using TagPage.Core.Sports;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>Several rackets filled in from what each was last strung with.</summary>
internal static class DropOffFill
{
    /// <summary>All are ticked but those on the bench already.</summary>
    public static DropOffInput Of(IEnumerable<(NewJobStore.RacketRow Racket, JobRow? Last)> rackets, DateOnly today, ShopDetails shop, PriceList prices)
    {
        var days = JobFill.New(null, "", today, shop, listed: true);
        return new DropOffInput
        {
            FormKey = FormKey.New(),
            ReceivedOn = days.ReceivedOn,
            PromisedFor = days.PromisedFor,
            Rackets = [.. rackets.Select(on => Row(on.Racket, on.Last, shop, prices.Prices(on.Racket.Sport)))],
        };
    }

    private static DropOffRacket Row(NewJobStore.RacketRow racket, JobRow? last, ShopDetails shop, bool listed)
    {
        var row = last is null ? new DropOffRacket { TensionUnit = shop.TensionUnit } : (DropOffRacket)JobFill.Order(new DropOffRacket(), last, shop);
        return row with
        {
            RacketId = racket.Id,
            Announced = racket.OpenIsExpected,
            Ticked = racket is { OpenIsExpected: true } or { OpenJobId: null, ReadyTicket: null, IsLost: false },
            Price = listed ? null : row.Price,
            ReceivedWhere = null,
            LeftAtId = null,
            CollectAtId = null,
        };
    }

    /// <summary>What a racket's job would come to, as it is filled in; null where nobody knows.</summary>
    public static long? Price(DropOffRacket row, Sport sport, PriceList prices, ShopDetails shop)
    {
        if (row.Price is { } typed)
            return Currencies.ToMinor(typed, shop.Currency);
        var lines = row.MainsId is not { } mains ? [] : prices.Lines(new PricedJob
        {
            Sport = sport,
            MainsId = mains,
            CrossesId = row.CrossesId ?? mains,
            MainsByShop = row.MainsSuppliedBy == Supplier.Shop,
            CrossesByShop = (row.CrossesSuppliedBy ?? row.MainsSuppliedBy) == Supplier.Shop,
            Extras = row.Extras,
        }, agreed: null);
        return lines.Count > 0 ? lines.Sum(line => line.AmountMinor) : null;
    }
}
