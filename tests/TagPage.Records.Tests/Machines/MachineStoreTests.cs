using TagPage.Core.Units;
using TagPage.Records.Machines;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Machines;

/// <summary>Machine 1, to be checked every 30 days.</summary>
public sealed class MachineStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _machine;

    public MachineStoreTests() => _machine = Add(Machine);

    private MachineStore Store => new(_street.Database, _street.Clock);

    private static MachineEntry Machine => new() { FormKey = FormKey.New(), Version = 1, Name = "Machine 1", Kind = MachineKind.Crank, EveryDays = 30 };

    private static CheckEntry At(DateOnly day) => new() { FormKey = FormKey.New(), CheckedOn = day, Reference = 50, Measured = 51, Unit = TensionUnit.Lb };

    private long Add(MachineEntry entry) => ((Outcome.Done)Store.Add(Who.Shop, entry)).Id;

    private MachineRow Row => Store.Get(_machine)!;

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Never_checked_it_is_due_as_many_days_after_it_was_set_up()
    {
        Assert.Equal(Street.Today.AddDays(30), Row.DueOn);
        Assert.Empty(Store.Overdue());

        _street.Time.Advance(TimeSpan.FromDays(30));
        Assert.Empty(Store.Overdue());
        _street.Time.Advance(TimeSpan.FromDays(1));
        Assert.Equal("Machine 1", Assert.Single(Store.Overdue()).Name);
    }

    [Fact]
    public void Latest_check_decides_whatever_was_written_last()
    {
        _street.Check(true, () => Store.Check(Who.Bench(null), _machine, At(Street.Today.AddDays(-2))));
        _street.Check(true, () => Store.Check(Who.Shop, _machine, At(Street.Today.AddDays(-40))));

        Assert.Equal((Street.Today.AddDays(-2), Street.Today.AddDays(28)), (Row.CheckedOn!.Value, Row.DueOn!.Value));
        Assert.Equal([Street.Today.AddDays(-2), Street.Today.AddDays(-40)], Store.Checks(_machine).Select(check => check.CheckedOn));
    }

    [Theory]
    [InlineData(50, 51, 2)]
    [InlineData(50, 49, -2)]
    [InlineData(25, 25, 0)]
    public void Deviation_is_in_per_cent_of_what_it_was_set_to(double reference, double measured, double per)
    {
        _street.Check(true, () => Store.Check(Who.Shop, _machine, At(Street.Today) with { Reference = (decimal)reference, Measured = (decimal)measured }));

        Assert.Equal((decimal)per, Store.Checks(_machine)[0].Deviation);
    }

    [Fact]
    public void Whoever_wants_no_reminder_and_whatever_is_no_longer_used_is_never_overdue()
    {
        var free = Add(Machine with { FormKey = FormKey.New(), Name = "Machine 2", EveryDays = null });
        _street.Check(true, () => Store.Change(Who.Shop, _machine, Machine with { IsRetired = true }));
        _street.Time.Advance(TimeSpan.FromDays(400));

        Assert.Empty(Store.Overdue());
        Assert.Null(Store.Get(free)!.DueOn);
    }

    [Fact]
    public void Two_machines_of_one_name_are_refused()
    {
        var second = Store.Add(Who.Shop, Machine with { FormKey = FormKey.New(), Name = "machine 1" });

        Assert.IsType<MachineNameTaken>(Assert.IsType<Outcome.Refused>(second).Why);
        Assert.Single(Store.List());
    }

    [Fact]
    public void Check_in_the_future_is_refused()
    {
        var early = Store.Check(Who.Shop, _machine, At(Street.Today.AddDays(1)));

        Assert.IsType<CheckInFuture>(Assert.IsType<Outcome.Refused>(early).Why);
        Assert.Empty(Store.Checks(_machine));
    }
}
