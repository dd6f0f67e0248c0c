using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Events;

public sealed class EventStoreTests : IDisposable
{
    private readonly Fair _fair = new();

    public void Dispose() => _fair.Dispose();

    [Fact]
    public void Helpers_tablet_works_until_the_event_is_closed()
    {
        var desk = _fair.Events.Get(Who.Shop, _fair.Id)!;
        var token = _fair.Sessions.Token(desk);
        var secret = _fair.Sessions.Begin(_fair.Sessions.Of(token)!);
        Assert.Equal(_fair.Id, _fair.Sessions.Find(secret)!.EventId);

        Fair.Done(_fair.Events.Close(Who.Shop, _fair.Id));

        Assert.Null(_fair.Sessions.Find(secret));
        Assert.Null(_fair.Sessions.Of(token));
        Assert.Null(_fair.Events.Get(_fair.Helper, _fair.Id));
        Fair.Done(_fair.Events.Reopen(Who.Shop, _fair.Id));
        Assert.Null(_fair.Sessions.Of(token));
    }

    [Fact]
    public void Helpers_are_signed_out_with_one_press_and_the_old_square_is_void()
    {
        var desk = _fair.Events.Get(Who.Shop, _fair.Id)!;
        var secret = _fair.Sessions.Begin(desk);

        Fair.Done(_fair.Events.SignHelpersOut(Who.Shop, _fair.Id));

        Assert.Null(_fair.Sessions.Find(secret));
        Assert.Null(_fair.Sessions.Begin(desk));
    }

    [Fact]
    public void Nobody_has_to_remember_to_close_it_a_day_after_its_last_it_is_over()
    {
        var secret = _fair.Sessions.Begin(_fair.Events.Get(Who.Shop, _fair.Id)!);

        _fair.Wait(24 * 60);
        Assert.NotNull(_fair.Sessions.Find(secret));
        _fair.Wait(24 * 60);
        Assert.Null(_fair.Sessions.Find(secret));
    }

    [Fact]
    public void Token_of_another_purpose_or_with_a_letter_changed_is_void()
    {
        var token = _fair.Sessions.Token(_fair.Events.Get(Who.Shop, _fair.Id)!);

        Assert.Null(_fair.Sessions.Of(token[..^1] + (token[^1] == 'A' ? 'B' : 'A')));
        Assert.Null(_fair.Sessions.Of("1-"));
        Assert.Null(_fair.Sessions.Of("nonsense"));
    }

    [Fact]
    public void Event_with_rackets_at_its_desk_is_not_closed()
    {
        var number = _fair.TakeIn();

        Assert.Equal([number], _fair.Street.Refused<RacketsStillThere>(() => _fair.Events.Close(Who.Shop, _fair.Id)).Numbers);
    }

    [Fact]
    public void Days_backwards_and_hours_that_cannot_be_read_are_refused()
    {
        _fair.Street.Refused<EventDaysUnfit>(() => _fair.Events.Add(Who.Shop, new EventEntry
        {
            FormKey = FormKey.New(),
            Name = "Backwards",
            FromOn = Street.Today,
            ToOn = Street.Today.AddDays(-1),
        }));
        _fair.Street.Refused<WorkHoursUnread>(() => _fair.Technicians.Add(Who.Shop, _fair.Id, new TechnicianEntry { FormKey = FormKey.New(), Name = "Edda", Hours = "all day" }));
    }

    [Fact]
    public void Change_by_two_is_told_to_the_second()
    {
        var entry = new EventEntry { Version = 1, Name = "Harbour Open 2", FromOn = Street.Today };
        Fair.Done(_fair.Events.Change(Who.Shop, _fair.Id, entry));

        _fair.Street.Refused<SavedMeanwhile>(() => _fair.Events.Change(Who.Shop, _fair.Id, entry with { Name = "Harbour Open 3" }));
    }

    [Fact]
    public void Lunch_is_no_time_to_string()
    {
        Assert.Equal([(9, 13), (14, 19)], _fair.Board.Technician(_fair.Runa)!.Hours.Select(time => (time.From.Hour, time.To.Hour)));
        Fair.Done(_fair.Technicians.Pause(_fair.Helper, _fair.Id, _fair.Bram, 20));
        Assert.Equal([Fair.At(9), Fair.At(10, 20)], _fair.Board.Technician(_fair.Bram)!.Hours.Select(time => time.From));
    }
}
