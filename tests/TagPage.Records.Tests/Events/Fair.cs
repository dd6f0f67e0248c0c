using TagPage.Core.Jobs;
using TagPage.Records.Clients;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Events;

/// <summary>The Harbour Open of one day, at ten in the morning: Runa and Bram string from nine to seven, Runa with an hour of lunch.</summary>
internal sealed class Fair : IDisposable
{
    public Fair(bool bram = true)
    {
        Id = Done(Events.Add(Who.Shop, new EventEntry { FormKey = FormKey.New(), Name = "Harbour Open", FromOn = Street.Today, PriceOwn = 12, PriceDesk = 20 }));
        Runa = Done(Technicians.Add(Who.Shop, Id, new TechnicianEntry { FormKey = FormKey.New(), Name = "Runa", Machine = "Table", Hours = "9-13, 14-19" }));
        if (bram)
            Bram = Done(Technicians.Add(Who.Shop, Id, new TechnicianEntry { FormKey = FormKey.New(), Name = "Bram", Machine = "Stand", Hours = "9-19" }));
        Helper = Who.Helper(Id);
    }

    public Street Street { get; } = new();
    public long Id { get; }
    public long Runa { get; }
    public long Bram { get; }
    public Who Helper { get; }

    public EventStore Events => new(Street.Database, Shops, Street.Time);
    public TechnicianStore Technicians => new(Street.Database, Street.Clock);
    public DeskMoveStore Moves => new(Street.Database, Street.Clock);
    public DeskFindStore Finds => new(Street.Database);
    public ShiftStore Shifts => new(Street.Database, Street.Clock);
    public EventSessionStore Sessions => new(Street.Database, new LinkTokens(Street.Folder), Street.Clock);
    public IntakeStore Intakes => new(Street.Database, new ClientStore(Street.Database, Shops, Street.Clock), Shops, Street.Clock);
    public EntryChangeStore Changes => new(Street.Database, Shops, Street.Clock);
    public EventBillStore Bills => new(Street.Database, Shops, Street.Clock);
    public DeskBoard Board => new DeskStore(Street.Database, Street.Clock).Get(Who.Shop, Id)!;

    private ShopStore Shops => new(Street.Database);

    public static DateTime At(int hour, int minute = 0) => Street.Today.ToDateTime(new TimeOnly(hour, minute));

    /// <summary>A visitor's racket; the answer is its desk number.</summary>
    public int TakeIn(string name = "Tove Alling", Func<IntakeEntry, IntakeEntry>? but = null) => (int)Done(Intakes.Add(Helper, Id, Entry(name, but)));

    public IntakeEntry Entry(string name = "Tove Alling", Func<IntakeEntry, IntakeEntry>? but = null)
    {
        var entry = new IntakeEntry
        {
            FormKey = FormKey.New(),
            Team = "Norden",
            Visitor = new VisitorEntry { Name = name, Frame = "Pellmore Meadow 98" },
            Order = new JobEntry { MainsId = Street.Records.Kind(), MainsTension = 52, CrossesTension = 50, MainsSuppliedBy = Supplier.Client },
        };
        return but?.Invoke(entry) ?? entry;
    }

    public EntryRow Of(int number) => Board.Of(number)!;

    public void Wait(int minutes) => Street.Time.Advance(TimeSpan.FromMinutes(minutes));

    public static long Done(Outcome outcome) => Assert.IsType<Outcome.Done>(outcome).Id;

    public void Dispose() => Street.Dispose();
}
