using TagPage.Records.Demo;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>Later readings of the first racket's strings, so that the demo shows what is learned from them.</summary>
public sealed class DemoReadings(DemoStore demo, ReadingStore readings, ShopClock clock)
{
    /// <summary>Per cent lost when the strings came out, from the newest that did.</summary>
    private static readonly decimal[] LostAtTheEnd = [24, 26, 23, 25];

    private const decimal LostSoFar = 15;

    public void Take()
    {
        var beds = demo.ShowcaseBeds(1 + LostAtTheEnd.Length);
        foreach (var (bed, lost) in beds.Where(b => b.EndedOn is not null).Zip(LostAtTheEnd))
            Take(bed, bed.EndedOn!.Value, lost, "Before cutting out");
        if (beds.FirstOrDefault(b => b.EndedOn is null) is { } inside && inside.StrungOn.AddDays(14) <= clock.Today)
            Take(inside, inside.StrungOn.AddDays(14), LostSoFar, "Came by with a grip");
    }

    private void Take(DemoStore.Bed bed, DateOnly day, decimal lostPercent, string note)
    {
        Done(readings.Add(Who.Shop, bed.JobId, new ReadingEntry
        {
            FormKey = FormKey.New(),
            TakenOn = day,
            Value = Math.Round(bed.First * (100 - lostPercent) / 100),
            InstrumentId = bed.InstrumentId,
            Note = note,
        }));
    }
}
