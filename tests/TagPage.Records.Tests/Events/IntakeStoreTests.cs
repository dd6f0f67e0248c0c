using TagPage.Core.Jobs;
using TagPage.Core.Sports;
using TagPage.Records.Events;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Events;

public sealed class IntakeStoreTests : IDisposable
{
    private readonly Fair _fair = new(bram: false);

    public void Dispose() => _fair.Dispose();

    [Fact]
    public void Price_of_the_event_is_one_line_whatever_the_shops_own_list_has()
    {
        _fair.Street.Records.Change("INSERT INTO money_setting (id, labour_minor) VALUES (1, 1600) ON CONFLICT (id) DO UPDATE SET labour_minor = 1600");

        var entry = _fair.Of(_fair.TakeIn());

        Assert.Equal("Whole|1200", _fair.Street.Records.Text($"SELECT group_concat(kind || '|' || amount_minor) FROM charge WHERE job_id = {entry.JobId}"));
        Assert.Equal(1200, entry.PriceMinor);
    }

    [Fact]
    public void Numbers_run_from_one_and_are_never_given_again()
    {
        Assert.Equal([1, 2], [_fair.TakeIn(), _fair.TakeIn("Ilse Marrow")]);
        Fair.Done(_fair.Moves.Withdraw(_fair.Helper, _fair.Id, 2));
        _fair.Street.Records.Change("DELETE FROM job WHERE id = (SELECT job_id FROM event_entry WHERE number = 2)");

        Assert.Equal(3, _fair.TakeIn("Edda Brink"));
    }

    [Fact]
    public void Form_sent_twice_takes_one_racket_in()
    {
        var entry = _fair.Entry();

        Assert.Equal((1, 1), (Fair.Done(_fair.Intakes.Add(_fair.Helper, _fair.Id, entry)), Fair.Done(_fair.Intakes.Add(_fair.Helper, _fair.Id, entry))));
        Assert.Single(_fair.Board.Entries);
    }

    [Fact]
    public void Visitor_is_an_ordinary_client_with_an_ordinary_ticket_and_gets_no_reminders()
    {
        var entry = _fair.Of(_fair.TakeIn());

        Assert.Equal(("Tove Alling", "Norden", JobState.Waiting), (entry.Player, entry.Team, entry.State));
        Assert.Equal(1, _fair.Street.Records.Count("client", "name = 'Tove Alling' AND reminders = 0 AND note = 'Harbour Open: Norden'"));
        Assert.Equal(1, _fair.Street.Records.Count("job", $"id = {entry.JobId} AND received_on = '2026-11-25' AND promised_for = '2026-11-25' AND price_minor = 1200"));
    }

    [Theory]
    [InlineData(Supplier.Client, null, 1200)]
    [InlineData(Supplier.Shop, null, 2000)]
    [InlineData(Supplier.Client, Supplier.Shop, 1600)]
    [InlineData(Supplier.Shop, Supplier.Client, 1600)]
    public void Price_follows_whose_strings_they_are_when_it_comes_in_and_when_that_is_changed(Supplier mains, Supplier? crosses, long price)
    {
        IntakeEntry With(IntakeEntry entry) => entry with { FormKey = FormKey.New(), Order = entry.Order with { MainsSuppliedBy = mains, CrossesSuppliedBy = crosses } };
        var (asked, changed) = (_fair.TakeIn(but: With), _fair.TakeIn("Ilse Marrow"));

        Fair.Done(_fair.Changes.Change(_fair.Helper, _fair.Id, changed, _fair.Of(changed).Version, With(_fair.Entry("Ilse Marrow"))));

        Assert.All(new[] { asked, changed }, number => Assert.Equal((mains, crosses ?? mains, price), _fair.Of(number) is var entry ? (entry.MainsSuppliedBy, entry.CrossesSuppliedBy, entry.PriceMinor!.Value) : default));
    }

    [Fact]
    public void Half_of_each_has_no_price_where_the_event_has_but_one()
    {
        _fair.Street.Records.Change("UPDATE event SET price_own_minor = NULL");

        Assert.Null(_fair.Of(_fair.TakeIn(but: entry => entry with { Order = entry.Order with { MainsSuppliedBy = Supplier.Shop, CrossesSuppliedBy = Supplier.Client } })).PriceMinor);
    }

    [Fact]
    public void Desks_string_costs_what_the_events_price_list_says()
    {
        var number = _fair.TakeIn(but: entry => entry with { Order = entry.Order with { MainsSuppliedBy = Supplier.Shop } });

        Assert.Equal(2000, _fair.Of(number).PriceMinor);
    }

    [Fact]
    public void Promise_is_the_match_where_it_can_be_kept_and_else_the_earliest_that_hurts_nobody()
    {
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 40) });
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(16) });

        Assert.Equal([Fair.At(10, 30), Fair.At(11), Fair.At(16)], _fair.Board.Entries.Select(entry => entry.Promised));
        Assert.Empty(_fair.Board.ToTell);
    }

    [Fact]
    public void Desk_says_who_would_slip_before_anything_is_promised_and_moves_them_when_it_insists()
    {
        _fair.TakeIn(but: entry => entry with { NeededBy = Fair.At(10, 30) });
        var wish = _fair.Entry("Edda Brink", entry => entry with { NeededBy = Fair.At(10, 29) });

        var asked = _fair.Intakes.Ask(_fair.Helper, _fair.Id, wish, Sport.Tennis)!;
        Assert.Equal((Fair.At(11), 1), (asked.Promise, Assert.Single(asked.Slips).Number));

        Fair.Done(_fair.Intakes.Add(_fair.Helper, _fair.Id, wish with { Insist = true }));
        var moved = Assert.Single(_fair.Board.ToTell);
        Assert.Equal((1, Fair.At(10, 30), Fair.At(11)), (moved.Number, moved.MovedFrom, moved.Promised));
        Assert.Equal(Fair.At(10, 29), _fair.Of(2).Promised);

        Fair.Done(_fair.Moves.Told(_fair.Helper, _fair.Id, 1));
        Assert.Empty(_fair.Board.ToTell);
    }

    [Fact]
    public void What_the_hours_do_not_suffice_for_is_refused_and_nobody_is_written_down()
    {
        _fair.Wait(8 * 60 + 50);

        _fair.Street.Refused<NoHoursLeft>(() => _fair.Intakes.Add(_fair.Helper, _fair.Id, _fair.Entry()));
    }

    [Fact]
    public void Impossible_order_is_refused_and_nobody_is_written_down()
    {
        _fair.Street.Refused<NobodyNamed>(() => _fair.Intakes.Add(_fair.Helper, _fair.Id, _fair.Entry(" ")));
        _fair.Street.Refused<Records.Jobs.StringUnknown>(() => _fair.Intakes.Add(_fair.Helper, _fair.Id,
            _fair.Entry(but: entry => entry with { Order = entry.Order with { MainsId = 404 } })));
        _fair.Street.Refused<NotAtTheEvent>(() => _fair.Intakes.Add(_fair.Helper, _fair.Id, _fair.Entry(but: entry => entry with { NeededBy = Fair.At(10).AddDays(3) })));
        _fair.Street.Refused<TechnicianNotThere>(() => _fair.Intakes.Add(_fair.Helper, _fair.Id, _fair.Entry(but: entry => entry with { KeptFor = 404 })));
    }

    [Fact]
    public void Match_that_has_begun_and_one_before_the_racket_may_be_strung_are_refused()
    {
        _fair.Street.Refused<NeededInPast>(() => _fair.Intakes.Add(_fair.Helper, _fair.Id, _fair.Entry(but: entry => entry with { NeededBy = Fair.At(9, 59), Insist = true })));
        _fair.Street.Refused<NeededBeforeStrung>(() => _fair.Intakes.Add(_fair.Helper, _fair.Id,
            _fair.Entry(but: entry => entry with { NeededBy = Fair.At(13), NotBefore = Fair.At(13), Insist = true })));
    }

    [Fact]
    public void Racket_that_is_at_the_desk_or_in_the_shop_is_not_taken_in_twice()
    {
        var hers = _fair.Entry() with { RacketId = _fair.Street.Racket };
        Fair.Done(_fair.Intakes.Add(Who.Shop, _fair.Id, hers));

        Assert.Equal(1, _fair.Street.Refused<AtDeskAlready>(() => _fair.Intakes.Add(Who.Shop, _fair.Id, hers with { FormKey = FormKey.New() })).Number);
        var second = _fair.Street.Records.Racket(_fair.Street.Pim, number: 2);
        _fair.Street.Records.Job(second);
        _fair.Street.Refused<OpenInShop>(() => _fair.Intakes.Add(Who.Shop, _fair.Id, hers with { FormKey = FormKey.New(), RacketId = second }));
    }

    [Fact]
    public void Helper_takes_in_what_they_hold_the_tag_of_and_finds_no_other_client()
    {
        var racket = _fair.Street.Racket;
        var code = Core.Tags.TagCode.Parse(_fair.Street.Records.Text("SELECT code FROM tag"));
        var hers = _fair.Entry() with { RacketId = racket };

        Assert.Empty(_fair.Finds.ByName(_fair.Helper, _fair.Id, "Pim"));
        Assert.IsType<Outcome.Absent>(_fair.Intakes.Add(_fair.Helper, _fair.Id, hers));
        Assert.Empty(_fair.Board.Entries);

        Assert.Equal(racket, _fair.Finds.ByTag(_fair.Helper, _fair.Id, code)!.RacketId);
        Fair.Done(_fair.Intakes.Add(_fair.Helper, _fair.Id, hers with { Code = code.ToString() }));
        Assert.Equal("Pim Ferran", Assert.Single(_fair.Finds.ByName(_fair.Helper, _fair.Id, "Pim")).Player);
        Assert.Single(_fair.Finds.ByName(Who.Shop, _fair.Id, "Pim"));
    }

    [Fact]
    public void Helper_adds_no_racket_to_a_player_who_is_not_at_the_event()
    {
        var hers = _fair.Entry() with { PlayerId = _fair.Street.Pim };

        _fair.Street.Check(false, () => _fair.Intakes.Add(_fair.Helper, _fair.Id, hers));
        Assert.Equal(1, Fair.Done(_fair.Intakes.Add(Who.Shop, _fair.Id, hers)));
        Assert.Equal((2, "Pim Ferran"), (_fair.Of(1).RacketNumber, _fair.Of(1).Player));
    }

    [Fact]
    public void Closed_event_takes_nothing_in()
    {
        Fair.Done(_fair.Events.Close(Who.Shop, _fair.Id));

        _fair.Street.Refused<EventIsClosed>(() => _fair.Intakes.Add(Who.Shop, _fair.Id, _fair.Entry()));
        Assert.IsType<Outcome.Absent>(_fair.Intakes.Add(_fair.Helper, _fair.Id, _fair.Entry()));
    }
}
