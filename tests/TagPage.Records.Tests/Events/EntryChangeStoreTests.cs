using TagPage.Core.Jobs;
using TagPage.Core.Units;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Events;

/// <summary>What was said about a racket at intake is said otherwise while it waits.</summary>
public sealed class EntryChangeStoreTests : IDisposable
{
    private readonly Fair _fair = new(bram: false);

    public void Dispose() => _fair.Dispose();

    [Fact]
    public void Everything_that_was_said_can_be_said_otherwise()
    {
        var number = _fair.TakeIn();
        var other = _fair.Street.Records.Kind("Quiet Heron");

        Fair.Done(Change(number, entry => entry with
        {
            Team = "Sund",
            NeededBy = Fair.At(15),
            NotBefore = Fair.At(13),
            KeptFor = _fair.Runa,
            Minutes = 40,
            Stencil = "S",
            StencilColour = "red",
            Order = entry.Order with { MainsId = other, MainsTension = 24, CrossesTension = 23, TensionUnit = TensionUnit.Kg, MainsSuppliedBy = Supplier.Shop, Note = "two knots" },
        }));

        var entry = _fair.Of(number);
        Assert.Equal(("Sund", Fair.At(15), Fair.At(13), _fair.Runa, 40, "S", "red"), (entry.Team, entry.NeededBy, entry.NotBefore, entry.KeptFor, entry.Minutes, entry.Stencil, entry.StencilColour));
        Assert.Equal((other, other, 24m, 23m, TensionUnit.Kg, "two knots"), (entry.MainsId, entry.CrossesId, entry.MainsTension, entry.CrossesTension, entry.TensionUnit, entry.Note));
        Assert.Equal((Fair.At(15), null, 2000), (entry.Promised, entry.MovedFrom, entry.PriceMinor));
    }

    [Fact]
    public void Another_tension_leaves_the_promise_as_it_was_told()
    {
        var number = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 20), Insist = true });
        _fair.Wait(30);

        Assert.Null(_fair.Changes.Ask(_fair.Helper, _fair.Id, number, Said(number)));
        Fair.Done(Change(number, entry => entry with { Order = entry.Order with { MainsTension = 55 } }));

        Assert.Equal((55m, Fair.At(10, 20)), (_fair.Of(number).MainsTension, _fair.Of(number).Promised));
    }

    [Fact]
    public void Later_match_is_the_promise_and_an_earlier_one_is_asked_about_before_it_hurts_somebody()
    {
        var first = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var second = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(12) });
        var sooner = Said(second) with { NeededBy = Fair.At(10, 29) };

        var asked = _fair.Changes.Ask(_fair.Helper, _fair.Id, second, sooner)!;
        Assert.Equal((Fair.At(11), first), (asked.Promise, Assert.Single(asked.Slips).Number));
        Assert.True(asked.Asks(sooner.NeededBy));
        Assert.Equal(Fair.At(12), _fair.Of(second).Promised);

        Fair.Done(_fair.Changes.Change(_fair.Helper, _fair.Id, second, _fair.Of(second).Version, sooner with { Insist = true }));
        Assert.Equal((first, Fair.At(10, 30), Fair.At(11)), (Assert.Single(_fair.Board.ToTell).Number, _fair.Of(first).MovedFrom, _fair.Of(first).Promised));

        Fair.Done(Change(second, entry => entry with { NeededBy = Fair.At(16) }));
        Assert.Equal((Fair.At(16), null, Fair.At(10, 30)), (_fair.Of(second).Promised, _fair.Of(second).MovedFrom, _fair.Of(first).Promised));
    }

    [Fact]
    public void On_court_goes_first_and_its_owner_is_not_to_be_told_what_they_asked_for()
    {
        var first = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var second = _fair.TakeIn();
        var court = Said(second) with { OnCourt = true };

        var asked = _fair.Changes.Ask(_fair.Helper, _fair.Id, second, court)!;
        Assert.Equal((Fair.At(10, 30), first), (asked.Promise, Assert.Single(asked.Hurt).Number));

        Fair.Done(_fair.Changes.Change(_fair.Helper, _fair.Id, second, _fair.Of(second).Version, court));
        Assert.Equal((Fair.At(10, 30), first), (_fair.Of(second).Promised, Assert.Single(_fair.Board.ToTell).Number));
    }

    [Fact]
    public void Of_two_tablets_that_change_the_same_racket_the_second_is_told()
    {
        var number = _fair.TakeIn();
        var (one, other) = (Said(number) with { Team = "Sund" }, Said(number) with { Team = "Fjell" });
        var version = _fair.Of(number).Version;
        Fair.Done(_fair.Changes.Change(_fair.Helper, _fair.Id, number, version, one));

        _fair.Street.Refused<SavedMeanwhile>(() => _fair.Changes.Change(_fair.Helper, _fair.Id, number, version, other));
        Assert.Equal("Sund", _fair.Of(number).Team);
    }

    [Theory]
    [InlineData("forward")]
    [InlineData("court")]
    [InlineData("shift")]
    public void Press_on_another_tablet_counts_as_a_change(string press)
    {
        var number = _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(12) });
        var (version, said) = (_fair.Of(number).Version, Said(number));
        Fair.Done(press switch
        {
            "forward" => _fair.Moves.PullForward(_fair.Helper, _fair.Id, number, true),
            "court" => _fair.Moves.PutOnCourt(_fair.Helper, _fair.Id, number, true),
            _ => _fair.Shifts.Shift(_fair.Helper, _fair.Id, 30),
        });

        _fair.Street.Refused<SavedMeanwhile>(() => _fair.Changes.Change(_fair.Helper, _fair.Id, number, version, said));
    }

    [Fact]
    public void Change_sent_twice_is_made_once()
    {
        var number = _fair.TakeIn();
        var (version, said) = (_fair.Of(number).Version, Said(number) with { Team = "Sund" });

        Fair.Done(_fair.Changes.Change(_fair.Helper, _fair.Id, number, version, said));
        Fair.Done(_fair.Changes.Change(_fair.Helper, _fair.Id, number, version, said));

        Assert.Equal(("Sund", version + 1), (_fair.Of(number).Team, _fair.Of(number).Version));
    }

    [Fact]
    public void Racket_that_is_on_a_machine_stays_as_it_was_taken()
    {
        var number = _fair.TakeIn();
        Fair.Done(_fair.Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));

        var why = _fair.Street.Refused<EntryMovedOn>(() => Change(number, entry => entry with { Team = "Sund" }));
        Assert.Equal((JobState.OnMachine, "Runa"), (why.State, why.By));
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        var number = _fair.TakeIn();

        _fair.Street.Refused<NeededInPast>(() => Change(number, entry => entry with { NeededBy = Fair.At(9), Insist = true }));
        _fair.Street.Refused<NotAtTheEvent>(() => Change(number, entry => entry with { NeededBy = Fair.At(9).AddDays(3) }));
        _fair.Street.Refused<NoHoursLeft>(() => Change(number, entry => entry with { NotBefore = Fair.At(18, 50) }));
        _fair.Street.Refused<StringUnknown>(() => Change(number, entry => entry with { Order = entry.Order with { MainsId = 404 } }));
        _fair.Street.Refused<TensionImpossible>(() => Change(number, entry => entry with { Order = entry.Order with { MainsTension = 520 } }));
        _fair.Street.Check(false, () => _fair.Changes.Change(_fair.Helper, _fair.Id, 404, 1, Said(number)));
    }

    [Fact]
    public void What_the_desk_does_not_ask_for_stays_and_an_agreed_price_too()
    {
        var number = _fair.TakeIn(but: entry => entry with { Order = entry.Order with { Price = 7 } });
        _fair.Street.Records.Change("UPDATE job SET mains_pre_stretch = 10, pieces = 1 WHERE id = (SELECT job_id FROM event_entry)");

        Fair.Done(Change(number, entry => entry with { Team = "Sund", Order = entry.Order with { Price = 7 } }));

        Assert.Equal((10, 1, 700), (_fair.Of(number).MainsPreStretch, _fair.Of(number).Pieces, _fair.Of(number).PriceMinor));
    }

    private Outcome Change(int number, Func<IntakeEntry, IntakeEntry> but) =>
        _fair.Changes.Change(_fair.Helper, _fair.Id, number, _fair.Of(number).Version, but(Said(number)));

    /// <summary>As its form is filled in.</summary>
    private IntakeEntry Said(int number)
    {
        var entry = _fair.Of(number);
        return new IntakeEntry
        {
            FormKey = FormKey.New(),
            Team = entry.Team,
            NeededBy = entry.NeededBy,
            NotBefore = entry.NotBefore,
            OnCourt = entry.OnCourt,
            KeptFor = entry.KeptFor,
            Minutes = entry.Minutes,
            Order = new JobEntry { MainsId = entry.MainsId, MainsTension = entry.MainsTension, CrossesTension = entry.CrossesTension, TensionUnit = entry.TensionUnit, MainsSuppliedBy = entry.MainsSuppliedBy },
        };
    }
}
