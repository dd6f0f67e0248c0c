using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Web.Start.Demo;

/// <summary>An event whose desk is staffed and empty: its rackets would stand on the bench and in the lists of a shop that has none.</summary>
public sealed class DemoEvent(EventStore events, TechnicianStore technicians, ShopClock clock)
{
    public void Open()
    {
        var id = Expect(events.Add(Who.Shop, new EventEntry
        {
            FormKey = FormKey.New(),
            Name = "Ferrygate Open",
            Place = "Hall of the sports centre",
            FromOn = clock.Today,
            ToOn = clock.Today.AddDays(1),
            PriceOwn = 12,
            PriceDesk = 22,
        }));
        // Whatever the hour at which somebody tries it.
        Expect(technicians.Add(Who.Shop, id, new TechnicianEntry { FormKey = FormKey.New(), Name = "Runa", Machine = "Drop-weight", Hours = "0:00-24:00" }));
        Expect(technicians.Add(Who.Shop, id, new TechnicianEntry { FormKey = FormKey.New(), Name = "Bram", Machine = "Lock-out", Hours = "0:00-24:00" }));
    }

    private static long Expect(Outcome outcome) =>
        outcome is Outcome.Done done ? done.Id : throw new InvalidOperationException($"The demo's event was refused: {outcome}");
}
