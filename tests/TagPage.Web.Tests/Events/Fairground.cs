using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Core.Jobs;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>The Harbour Open at the desk of a test's shop, at ten in the morning. Runa and Bram string from nine to seven.</summary>
internal sealed class Fairground
{
    private readonly TestShop _shop;

    public Fairground(TestShop shop)
    {
        _shop = shop;
        if (shop.Records.Count("shop") == 0)
            shop.Records.Shop();
        Id = Done(shop.Get<EventStore>().Add(Who.Shop, new EventEntry { FormKey = FormKey.New(), Name = "Harbour Open", FromOn = TestShop.Today, PriceOwn = 12, PriceDesk = 20 }));
        Runa = Technician("Runa");
        Bram = Technician("Bram");
    }

    public long Id { get; }
    public long Runa { get; }
    public long Bram { get; }
    public string Home => $"/desk/{Id}";
    public DeskBoard Board => _shop.Get<DeskStore>().Get(Who.Shop, Id)!;
    public string Link => $"/desk/enter/{_shop.Get<EventSessionStore>().Token(Board.Event)}";

    public static DateTime At(int hour, int minute = 0) => TestShop.Today.ToDateTime(new TimeOnly(hour, minute));

    /// <summary>A tablet that joined by the square.</summary>
    public async Task<Visitor> Tablet()
    {
        var tablet = _shop.Stranger();
        var joined = await tablet.Send(await tablet.Open(Link));
        Assert.Equal(Home, joined.Location);
        return tablet;
    }

    public int TakeIn(string name = "Tove Alling", bool junior = false, DateTime? neededBy = null) => (int)Done(_shop.Get<IntakeStore>().Add(Who.Shop, Id, new IntakeEntry
    {
        FormKey = FormKey.New(),
        Team = "Norden",
        NeededBy = neededBy,
        Visitor = new VisitorEntry { Name = name, Junior = junior },
        Order = new JobEntry { MainsId = _shop.Records.Kind(), MainsTension = 52, CrossesTension = 50, MainsSuppliedBy = Supplier.Client },
    }));

    private long Technician(string name) =>
        Done(_shop.Get<TechnicianStore>().Add(Who.Shop, Id, new TechnicianEntry { FormKey = FormKey.New(), Name = name, Hours = "9-19" }));

    public static long Done(Outcome outcome) => Assert.IsType<Outcome.Done>(outcome).Id;

    /// <summary>The button that says so, with the form it stands in.</summary>
    public static async Task<WebPage> Press(Visitor visitor, WebPage page, string words)
    {
        var button = page.Document.QuerySelectorAll<IHtmlButtonElement>("main button").First(b => b.TextContent.Trim() == words);
        var form = (IHtmlFormElement)button.Closest("form")!;
        return button.Name is { Length: > 0 } name ? await visitor.Send(page, form, (name, button.Value)) : await visitor.Send(page, form);
    }
}
