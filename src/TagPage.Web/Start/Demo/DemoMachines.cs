using TagPage.Core.Units;
using TagPage.Records.Machines;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>The machines that the invented tickets name, and checks of their pull; that of the second is overdue.</summary>
public sealed class DemoMachines(MachineStore machines, ShopClock clock)
{
    public void Set()
    {
        var pull = Add("constant pull", MachineKind.ElectronicPull);
        Check(pull, daysAgo: 74, measured: 48.6m, "pulls low; calibrated");
        Check(pull, daysAgo: 74, measured: 50.1m, "after calibration");
        Check(pull, daysAgo: 12, measured: 49.9m, "");
        Check(Add("drop-weight", MachineKind.DropWeight), daysAgo: 96, measured: 50.2m, "new jaws");
    }

    private long Add(string name, MachineKind kind) => Done(machines.Add(Who.Shop, new MachineEntry { FormKey = FormKey.New(), Name = name, Kind = kind, EveryDays = 90 }));

    private void Check(long machine, int daysAgo, decimal measured, string note) => Done(machines.Check(Who.Shop, machine, new CheckEntry
    {
        FormKey = FormKey.New(),
        CheckedOn = clock.Today.AddDays(-daysAgo),
        Reference = 50,
        Measured = measured,
        Unit = TensionUnit.Lb,
        Note = note,
    }));
}
