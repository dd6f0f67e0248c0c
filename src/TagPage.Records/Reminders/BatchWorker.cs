using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

/// <summary>Works batches off in the background, not in the shop's quiet hours.</summary>
public sealed class BatchWorker(BatchStore store, ShopStore shops, ShopClock shopClock, TimeProvider clock, ILogger<BatchWorker> log)
    : PeriodicWork(TimeSpan.FromSeconds(5), clock, log,
        "A batch of reminders could not go on; it is tried again.")
{
    /// <summary>How many households one round handles, so that a stop takes effect soon.</summary>
    private const int ARound = 20;

    public bool IsQuiet => IsWithin(shopClock.OnTheWall(shopClock.Now).Hour, shops.Get().QuietFromHour, shops.Get().QuietUntilHour);

    /// <summary>From one hour until another, past midnight where need be.</summary>
    public static bool IsWithin(int hour, int from, int until) => from <= until ? hour >= from && hour < until : hour >= from || hour < until;

    public void Round()
    {
        for (var n = 0; n < ARound && !IsQuiet && store.Step(); n++)
        {
        }
    }

    protected override void Work() => Round();
}
