using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

/// <summary>Pim's strings of 1 November were in racket 2 all the time: somebody took the wrong ticket.</summary>
public sealed class JobRacketStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _second;

    public JobRacketStoreTests() => _second = _street.Records.Racket(_street.Pim, number: 2);

    public void Dispose() => _street.Dispose();

    private JobRacketStore Store => new(_street.Database, _street.Time);

    private JobRow Job(long id) => new JobStore(_street.Database).Get(Who.Shop, id)!;

    private Outcome Move(long job, long racket) => Store.Move(Who.Shop, job, new MovedJobEntry { Version = Job(job).Version, RacketId = racket });

    private long Strung(long racket, DateOnly on, DateOnly? ended = null, BedEnd? how = null)
    {
        var job = _street.Records.Job(racket, strungOn: on);
        _street.Records.Change("UPDATE job SET ended_on = @ended, ended_how = @how WHERE id = @job", new { job, ended, how = how?.ToString() });
        return job;
    }

    private string Ends(params long[] jobs) => string.Join(' ', jobs.Select(id => $"{Job(id).EndedOn:dd.MM}{Job(id).EndedHow}|"));

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_moves_a_ticket(Actor actor, bool allowed) =>
        _street.Check(allowed, () => Store.Move(_street.Be(actor), _street.Strung, new MovedJobEntry { Version = 1, RacketId = _second }));

    [Fact]
    public void Order_readings_and_payment_go_along_and_frozen_hours_and_the_labels_date_do_not()
    {
        _street.Records.Reading(_street.Strung, 62);
        _street.Records.Change("UPDATE job SET paid_on = '2026-11-03', hours_played = 9, label_date = '2026-12-24'; UPDATE reading SET hours = 2; INSERT INTO feel (job_id, bed, said_on) VALUES (1, 'Right', '2026-11-04')");
        var before = Job(_street.Strung);

        Move(_street.Strung, _second);

        Assert.Equal(before with { RacketId = _second, Number = 2, Version = before.Version + 1 }, Job(_street.Strung));
        Assert.Equal(1, _street.Records.Count("job", "hours_played IS NULL AND label_date IS NULL"));
        Assert.Equal(1, _street.Records.Count("reading", "hours IS NULL"));
        Assert.Equal(1, _street.Records.Count("feel"));
    }

    [Fact]
    public void Strings_that_were_cut_out_for_it_are_in_again()
    {
        var before = Strung(_street.Racket, new(2026, 10, 1), new(2026, 11, 1), BedEnd.CutOut);

        Move(_street.Strung, _second);

        Assert.Equal("|", Ends(before));
    }

    [Fact]
    public void Strings_between_others_leave_them_to_follow_each_other_and_end_where_they_come_to_stand()
    {
        var (first, last) = (Strung(_street.Racket, new(2026, 10, 1), new(2026, 11, 1), BedEnd.CutOut), Strung(_street.Racket, new(2026, 11, 20)));
        _street.Records.Change("UPDATE job SET ended_on = '2026-11-20', ended_how = 'CutOut' WHERE id = @Strung", new { _street.Strung });
        var (there, after) = (Strung(_second, new(2026, 9, 1), new(2026, 11, 10), BedEnd.CutOut), Strung(_second, new(2026, 11, 10)));

        Move(_street.Strung, _second);

        Assert.Equal("20.11CutOut| |", Ends(first, last));
        Assert.Equal("01.11CutOut| 10.11Unknown| |", Ends(there, _street.Strung, after));
    }

    [Fact]
    public void Own_end_that_somebody_noted_stays()
    {
        _street.Records.Change("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear'");

        Move(_street.Strung, _second);

        Assert.Equal("20.11Wear|", Ends(_street.Strung));
    }

    [Fact]
    public void Racket_has_one_bed_at_a_time()
    {
        var broken = Strung(_second, new(2026, 10, 1), new(2026, 11, 5), BedEnd.Wear);
        Assert.Equal(Job(broken).Ticket, _street.Refused<InItThen>(() => Move(_street.Strung, _second)).Ticket);

        _street.Records.Change("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Mishit' WHERE id = @Strung; UPDATE job SET strung_on = '2026-11-10', ended_on = NULL, ended_how = NULL WHERE id = @broken", new { _street.Strung, broken });
        _street.Refused<InItThen>(() => Move(_street.Strung, _second));
    }

    [Fact]
    public void What_a_client_asked_for_or_felt_never_becomes_another_clients()
    {
        var bos = _street.Records.Racket(_street.Records.Player(_street.Ewan, "Bo Lockyer"));
        var (asked, felt) = (_street.Records.Job(_second), _street.Strung);
        _street.Records.Change("INSERT INTO job_request (job_id, asked_in) VALUES (@asked, 'OwnPage'); INSERT INTO feel (job_id, bed, said_on) VALUES (@felt, 'Right', '2026-11-04')", new { asked, felt });

        Assert.Equal("Odalys Ferran", _street.Refused<ClientSpokeOfIt>(() => Move(asked, bos)).Client);
        _street.Refused<ClientSpokeOfIt>(() => Move(felt, bos));
        _street.Check(true, () => Move(asked, _street.Racket));
        _street.Check(true, () => Move(felt, _second));
    }

    [Fact]
    public void Another_client_was_not_told_that_it_is_ready()
    {
        var bos = _street.Records.Racket(_street.Records.Player(_street.Ewan, "Bo Lockyer"));
        _street.Records.Change("UPDATE job SET told_ready_at = '2026-11-02T10:00:00.000Z'");

        Move(_street.Strung, _second);
        Assert.NotNull(Job(_street.Strung).ToldReadyAt);
        Move(_street.Strung, bos);
        Assert.Null(Job(_street.Strung).ToldReadyAt);
    }

    [Fact]
    public void Same_racket_unknown_racket_and_a_ticket_changed_meanwhile_are_told_apart()
    {
        _street.Refused<SameRacket>(() => Move(_street.Strung, _street.Racket));
        _street.Check(false, () => Move(_street.Strung, 99));
        _street.Refused<SavedMeanwhile>(() => Store.Move(Who.Shop, _street.Strung, new MovedJobEntry { Version = 7, RacketId = _second }));
    }
}
