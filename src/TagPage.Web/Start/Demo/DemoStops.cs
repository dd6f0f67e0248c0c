using TagPage.Records.Demo;
using TagPage.Records.Stops;
using TagPage.Records.Storage;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>Where the invented shop’s rackets are left and collected besides its bench.</summary>
public sealed class DemoStops(StopStore stops, DemoStore demo)
{
    public void Set()
    {
        Add("Club desk, Lido Lane", StopKind.Desk);
        Add("Drop box at the ferry", StopKind.DropBox);
        demo.UseStop();
    }

    private void Add(string name, StopKind kind) => Done(stops.Add(Who.Shop, new StopEntry { FormKey = FormKey.New(), Name = name, Kind = kind }));
}
