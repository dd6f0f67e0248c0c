using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Events;

/// <summary>An event of three days on which Edda does not string at the same hours.</summary>
public sealed class DayHoursTests : IDisposable
{
    private readonly Fair _fair = new();
    private readonly long _id;

    public DayHoursTests() => _id = Fair.Done(_fair.Events.Add(Who.Shop, new EventEntry { FormKey = FormKey.New(), Name = "Island Cup", FromOn = Street.Today, ToOn = Street.Today.AddDays(2) }));

    public void Dispose() => _fair.Dispose();

    [Fact]
    public void Each_day_has_its_own_hours_and_promises_are_kept_within_them()
    {
        var edda = Fair.Done(_fair.Technicians.Add(Who.Shop, _id, Edda("8-11", (1, "13-14, 15-16"), (2, "Off"))));
        Assert.Equal([(8, 11), (24 + 13, 24 + 14), (24 + 15, 24 + 16)], Hours(edda));

        // Two of half an hour are ready by eleven; the third goes to the next day, the fifth past its break.
        var promised = Enumerable.Range(0, 5).Select(_ => { TakeIn(); return Board.Entries[^1].Promised; }).ToList();
        Assert.Equal([Fair.At(10, 30), Fair.At(11), Fair.At(13, 30).AddDays(1), Fair.At(14).AddDays(1), Fair.At(15, 30).AddDays(1)], promised);
        TakeIn();
        _fair.Street.Refused<NoHoursLeft>(() => _fair.Intakes.Add(Who.Shop, _id, _fair.Entry()));
    }

    [Fact]
    public void Changed_hours_of_one_day_move_only_what_they_break()
    {
        var edda = Fair.Done(_fair.Technicians.Add(Who.Shop, _id, Edda("10-11", (1, "9-10"))));
        foreach (var _ in (int[])[1, 2, 3])
            TakeIn();

        Fair.Done(_fair.Technicians.Change(Who.Shop, _id, edda, Edda("10-11", (1, "12-13"))));

        Assert.Equal([(10, 11), (24 + 12, 24 + 13), (48 + 10, 48 + 11)], Hours(edda));
        Assert.Equal((3, Fair.At(12, 30).AddDays(1)), (Assert.Single(Board.ToTell).Number, Board.Of(3)!.Promised));
    }

    [Fact]
    public void Day_that_cannot_be_read_is_named_and_one_outside_the_event_does_nothing()
    {
        var why = _fair.Street.Refused<WorkHoursUnread>(() => _fair.Technicians.Add(Who.Shop, _id, Edda("9-17", (0, ""), (1, "noon"))));
        Assert.Equal("Days[1].Hours", why.Field);

        var edda = Fair.Done(_fair.Technicians.Add(Who.Shop, _id, Edda("9-17", (7, "1-2"))));
        Assert.Equal(3, Hours(edda).Count);
    }

    private DeskBoard Board => new DeskStore(_fair.Street.Database, _fair.Street.Clock).Get(Who.Shop, _id)!;

    private List<(int From, int To)> Hours(long technician) =>
        [.. Board.Technician(technician)!.Hours.Select(time => (Hour(time.From), Hour(time.To)))];

    private static int Hour(DateTime at) => (int)(at - Fair.At(0)).TotalHours;

    private void TakeIn() => Fair.Done(_fair.Intakes.Add(Who.Shop, _id, _fair.Entry()));

    private static TechnicianEntry Edda(string hours, params (int Day, string Hours)[] days) => new()
    {
        FormKey = FormKey.New(),
        Name = "Edda",
        Hours = hours,
        Days = [.. days.Select(day => new DayHours(Street.Today.AddDays(day.Day), day.Hours))],
    };
}
