using TagPage.Core.Jobs;
using TagPage.Core.Units;
using TagPage.Records.Deeds;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Stops;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Stops;

/// <summary>Pim's second racket, left at the academy's desk; the round goes there and to the drop box.</summary>
public sealed class RoundStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _desk, _box, _racket, _job;

    public RoundStoreTests()
    {
        var stops = new StopStore(_street.Database, _street.Clock);
        long Add(string name, StopKind kind) => ((Outcome.Done)stops.Add(Who.Shop, new StopEntry { FormKey = FormKey.New(), Name = name, Kind = kind })).Id;
        (_desk, _box) = (Add("Academy desk", StopKind.Desk), Add("Drop box", StopKind.DropBox));
        _racket = _street.Records.Racket(_street.Pim, number: 2);
        _job = TakeIn(_racket, left: _desk);
    }

    private RoundStore Rounds => new(_street.Database, _street.Clock);

    private MoveStore Moves => new(_street.Database, _street.Clock);

    private BackStore Backs => new(_street.Database, _street.Time);

    private ShopStore Shops => new(_street.Database);

    private JobRow Job(long? id = null) => new JobStore(_street.Database).Get(Who.Shop, id ?? _job)!;

    private RoundStore.Part Desk => Rounds.Parts(Who.Shop).Single(part => part.Stop.Id == _desk);

    private RoundStore.Last? Last => Rounds.LastMove(Who.Shop, _street.Clock.Now.AddHours(-8));

    private NewJobEntry Order(long? left, long? collect) => new()
    {
        FormKey = FormKey.New(),
        MainsId = _street.Records.Kind(),
        MainsTension = 52,
        TensionUnit = TensionUnit.Lb,
        ReceivedOn = Street.Today,
        LeftAtId = left,
        CollectAtId = collect,
    };

    private long TakeIn(long racket, long? left = null, long? collect = null) =>
        ((Outcome.Done)new NewJobStore(_street.Database, Shops, _street.Clock).Add(Who.Shop, racket, Order(left, collect))).Id;

    private void String(long job)
    {
        Moves.Start(Who.Shop, job);
        Moves.MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = Street.Today });
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Racket_goes_from_the_desk_to_the_bench_and_back_to_the_desk()
    {
        Assert.Equal((_job, "Academy desk"), (Assert.Single(Desk.ToFetch).Id, Job().IsAt));

        _street.Check(true, () => Rounds.Fetch(Who.Bench(null), [_job]));
        Assert.Equal((true, null), (Desk.IsEmpty, Job().IsAt));

        String(_job);
        Assert.Equal((_job, null), (Assert.Single(Desk.ToBring).Id, Job().IsAt));

        _street.Check(true, () => Rounds.Bring(Who.Bench(null), [_job]));
        Assert.Equal((_job, "Academy desk"), (Assert.Single(Desk.There).Id, Job().IsAt));

        Moves.Collect(Who.Shop, _job, new HandOutEntry { CollectedOn = Street.Today });
        Assert.Equal((true, null), (Desk.IsEmpty, Job().IsAt));
    }

    [Theory]
    [InlineData(null, null, null, null)]
    [InlineData(null, 0L, null, null)]
    [InlineData(1L, null, 1L, 1L)]
    [InlineData(1L, 0L, 1L, null)]
    [InlineData(null, 2L, null, 2L)]
    [InlineData(2L, 1L, 2L, 1L)]
    public void It_is_collected_where_it_was_left_unless_somebody_says_otherwise(long? left, long? collect, long? isLeft, long? isCollected)
    {
        var job = Job(TakeIn(_street.Racket, left, collect));

        Assert.Equal((isLeft, isCollected), (job.LeftAtId, job.CollectAtId));
    }

    [Fact]
    public void All_of_a_stop_are_moved_by_one_press_and_taken_back_by_another()
    {
        var other = TakeIn(_street.Racket, left: _desk);

        Assert.IsType<Outcome.Done>(Rounds.Fetch(Who.Shop, [_job, other]));
        Assert.Equal((JobDeed.Fetched, "Academy desk", 2), (Last!.Deed, Last.Stop, Last.Jobs.Count));

        Assert.IsType<Outcome.Done>(Rounds.Unfetch(Who.Shop, [.. Last.Jobs.Select(job => job.Id)]));
        Assert.Equal(2, Desk.ToFetch.Count);
        Assert.Null(Last);
    }

    [Fact]
    public void What_was_brought_is_taken_back_and_then_what_was_fetched_before_is_no_longer_offered_once_it_is_strung()
    {
        Rounds.Fetch(Who.Shop, [_job]);
        String(_job);
        Rounds.Bring(Who.Shop, [_job]);
        Assert.Equal(JobDeed.Brought, Last!.Deed);

        Rounds.Unbring(Who.Shop, [_job]);

        Assert.Equal(_job, Assert.Single(Desk.ToBring).Id);
        Assert.Null(Last);
        Assert.Equal(Job().Ticket, _street.Refused<RoundMovedOn>(() => Rounds.Unfetch(Who.Shop, [_job])).Ticket);
    }

    [Fact]
    public void Of_two_tablets_that_fetch_the_same_racket_one_gets_it_and_the_other_is_told()
    {
        var outcomes = new Outcome[2];
        Parallel.For(0, 2, tablet => outcomes[tablet] = Rounds.Fetch(Who.Shop, [_job]));

        Assert.Single(outcomes, new Outcome.Done(_job));
        Assert.Single(outcomes, new Outcome.Refused(new RoundMovedOn(Job().Ticket)));
    }

    [Fact]
    public void One_that_moved_on_keeps_the_others_where_they_are()
    {
        var other = TakeIn(_street.Racket, left: _desk);
        Moves.Start(Who.Shop, other);

        Assert.Equal(Job(other).Ticket, _street.Refused<RoundMovedOn>(() => Rounds.Fetch(Who.Shop, [_job, other])).Ticket);
        Assert.IsType<Outcome.Absent>(Rounds.Fetch(Who.Shop, [_job, 99]));
        _street.Refused<NoRacketChosen>(() => Rounds.Fetch(Who.Shop, []));
        Assert.Null(Job().FetchedAt);
    }

    [Fact]
    public void What_is_put_on_the_machine_was_fetched_and_is_still_with_the_technician_when_that_is_taken_back()
    {
        Moves.Start(Who.Shop, _job);
        Backs.Back(Who.Shop, _job, JobState.OnMachine);

        Assert.Equal((JobState.Waiting, false), (Job().State, Job().IsToFetch));
    }

    [Fact]
    public void Hand_out_taken_back_leaves_it_at_the_stop_and_stringing_taken_back_does_not()
    {
        String(_job);
        Rounds.Bring(Who.Shop, [_job]);
        Moves.Collect(Who.Shop, _job, new HandOutEntry { CollectedOn = Street.Today });

        Backs.Back(Who.Shop, _job, JobState.Collected);
        Assert.Equal("Academy desk", Job().IsAt);

        Backs.Back(Who.Shop, _job, JobState.Strung);
        Moves.MarkStrung(Who.Shop, _job, new StrungEntry { StrungOn = Street.Today });
        Assert.Equal((true, null), (Job().IsToBring, Job().IsAt));
    }

    [Fact]
    public void What_a_client_announced_for_a_stop_comes_in_when_it_is_fetched_there()
    {
        var orders = new OrderStore(_street.Database, new OutboxStore(_street.Database, _street.Time), Shops, new Mails(), _street.Clock);
        Assert.IsType<Outcome.Done>(orders.Ask(Who.Client(_street.Odalys), _street.Racket, FormKey.New(), new JobRequest(AskedIn.OwnPage, "") { StopId = _box }));
        var box = Rounds.Parts(Who.Shop).Single(part => part.Stop.Id == _box);
        var asked = Assert.Single(box.Announced);
        Assert.Equal((null, "Drop box", "Drop box"), (asked.IsAt, asked.LeftAt, asked.CollectAt));

        Rounds.Fetch(Who.Shop, [asked.Id]);

        Assert.Equal((false, false, Street.Today), (Job(asked.Id).Expected, Job(asked.Id).IsToFetch, Job(asked.Id).ReceivedOn));
    }

    [Fact]
    public void Client_cannot_name_a_stop_that_is_not_there()
    {
        var orders = new OrderStore(_street.Database, new OutboxStore(_street.Database, _street.Time), Shops, new Mails(), _street.Clock);

        _street.Refused<StopUnknown>(() => orders.Ask(Who.Client(_street.Odalys), _street.Racket, FormKey.New(), new JobRequest(AskedIn.OwnPage, "") { StopId = 99 }));
    }

    [Fact]
    public void Brought_in_over_the_counter_an_announced_racket_need_not_be_fetched()
    {
        _street.Records.Change("INSERT INTO job_request (job_id, asked_in) VALUES (@_job, 'OwnPage')", new { _job });
        Assert.Equal((true, false), (Job().Expected, Job().IsToFetch));

        Moves.Receive(Who.Shop, _job);

        Assert.Equal((false, false), (Job().Expected, Job().IsToFetch));
    }

    [Fact]
    public void Ticket_says_elsewhere_until_the_racket_is_there()
    {
        var edits = new EditJobStore(_street.Database, Shops, _street.Clock);
        ChangedJobEntry Changed(long? collect) => new()
        {
            Version = Job().Version,
            MainsId = Job().MainsId,
            MainsTension = 52,
            TensionUnit = TensionUnit.Lb,
            ReceivedOn = Street.Today,
            StrungOn = Job().StrungOn,
            LeftAtId = _desk,
            CollectAtId = collect,
        };
        _street.Refused<StopUnknown>(() => edits.Change(Who.Shop, _job, Changed(99)));
        Assert.IsType<Outcome.Done>(edits.Change(Who.Shop, _job, Changed(_box)));
        Assert.Equal((_desk, _box), (Job().LeftAtId!.Value, Job().CollectAtId!.Value));

        String(_job);
        Rounds.Bring(Who.Shop, [_job]);

        Assert.Equal("Drop box", _street.Refused<BroughtAlready>(() => edits.Change(Who.Shop, _job, Changed(_desk))).Stop);
        Assert.IsType<Outcome.Done>(edits.Change(Who.Shop, _job, Changed(_box)));
        Assert.Equal("Drop box", Job().IsAt);
    }

    [Fact]
    public void Who_moved_it_stands_on_the_ticket()
    {
        _street.Records.Change("INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, made_at) VALUES ('bram', 'bram', 'BRAM', '', '', '', 'Bench', '2026-11-01T09:00:00.000Z')");
        Rounds.Fetch(Who.Bench("bram"), [_job]);

        Assert.Equal("Fetched", _street.Records.Text($"SELECT deed FROM job_deed WHERE job_id = {_job} AND made_by = 'bram'"));
    }
}
