using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>An event whose desk is staffed and empty: its rackets would stand on the bench and in the lists of a shop that has none.</summary>
public sealed class DemoEvent(EventStore events, TechnicianStore technicians, ShopClock clock)
{
    public void Open()
    {
        var id = Done(events.Add(Who.Shop, new EventEntry
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
        Done(technicians.Add(Who.Shop, id, new TechnicianEntry { FormKey = FormKey.New(), Name = "Runa", Machine = "Drop-weight", Hours = "0:00-24:00" }));
        Done(technicians.Add(Who.Shop, id, new TechnicianEntry { FormKey = FormKey.New(), Name = "Bram", Machine = "Lock-out", Hours = "0:00-24:00" }));
    }
}
