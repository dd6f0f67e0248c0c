using TagPage.Core.Jobs;
using TagPage.Core.Units;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

public sealed class DropOffStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _second;
    private readonly long _sisters;
    private readonly Party _odalys;

    public DropOffStoreTests()
    {
        _second = _street.Records.Racket(_street.Pim, number: 2);
        _sisters = _street.Records.Racket(_street.Records.Player(_street.Odalys, "Noa Ferran", junior: true));
        _odalys = Party.Client(_street.Odalys);
    }

    private DropOffStore Store => new(_street.Database, new ShopStore(_street.Database), _street.Clock);

    private TogetherStore Together => new(_street.Database);

    private NewJobEntry Order(decimal mains = 52) => new() { MainsId = _street.Records.Kind(), MainsTension = mains, TensionUnit = TensionUnit.Lb, ReceivedOn = Street.Today, Price = 24.50m };

    private static DropOffEntry Entry(params (long Racket, NewJobEntry? Job)[] lines) => new()
    {
        FormKey = new string('k', FormKeys.KeyLength),
        ReceivedOn = Street.Today,
        PromisedFor = Street.Today.AddDays(2),
        Lines = [.. lines.Index().Select(line => new DropOffLine { Place = $"Rackets[{line.Index}]", RacketId = line.Item.Racket, Job = line.Item.Job })],
    };

    private IReadOnlyList<JobRow> Waiting => [.. Together.Get(Who.Shop, _odalys)!.Waiting];

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Household_brings_three_rackets_and_each_gets_its_ticket_and_the_one_promise()
    {
        var outcome = Store.Add(Who.Shop, _odalys, Entry((_street.Racket, Order()), (_second, Order(50)), (_sisters, Order(44))));

        var jobs = Waiting;
        Assert.Equal(new Outcome.Done(jobs[0].Id), outcome);
        Assert.Equal([(_street.Racket, 52m), (_second, 50m), (_sisters, 44m)], jobs.Select(job => (job.RacketId, job.MainsTension)));
        Assert.Equal([jobs[0].Ticket, jobs[0].Ticket + 1, jobs[0].Ticket + 2], jobs.Select(job => job.Ticket));
        Assert.All(jobs, job => Assert.Equal((JobState.Waiting, Street.Today, Street.Today.AddDays(2), 2450L), (job.State, job.ReceivedOn, job.PromisedFor!.Value, job.PriceMinor!.Value)));
    }

    [Fact]
    public void Second_press_makes_no_second_jobs()
    {
        var entry = Entry((_street.Racket, Order()), (_second, Order()));
        var first = Store.Add(Who.Shop, _odalys, entry);

        Assert.Equal(first, Store.Add(Who.Shop, _odalys, entry));
        Assert.Equal(2, Waiting.Count);
    }

    [Fact]
    public void One_impossible_racket_keeps_all_of_them_out_and_is_named_by_its_place()
    {
        var why = _street.Refused<TensionImpossible>(() => Store.Add(Who.Shop, _odalys, Entry((_street.Racket, Order()), (_second, Order(999)))));

        Assert.Equal("Rackets[1].MainsTension", why.Field);
    }

    [Fact]
    public void String_that_left_the_catalogue_meanwhile_is_named_at_its_racket_and_nothing_is_written()
    {
        var why = _street.Refused<StringUnknown>(() => Store.Add(Who.Shop, _odalys, Entry((_street.Racket, Order()), (_second, Order() with { CrossesId = 999 }))));

        Assert.Equal("Rackets[1].CrossesId", why.Field);
    }

    [Fact]
    public void Announced_ticket_comes_in_with_the_others_and_is_promised_too()
    {
        var announced = _street.Records.Job(_second);
        _street.Records.Change("INSERT INTO job_request (job_id, asked_in, asked_words) VALUES (@announced, 'Reminder', 'softer')", new { announced });

        Store.Add(Who.Shop, _odalys, Entry((_street.Racket, Order()), (_second, null)));

        var job = Assert.Single(Waiting, job => job.Id == announced);
        Assert.Equal((false, Street.Today, Street.Today.AddDays(2), "softer"), (job.Expected, job.ReceivedOn, job.PromisedFor!.Value, job.AskedWords));
        Assert.Equal(2, Waiting.Count);
    }

    [Fact]
    public void Ticket_that_somebody_took_in_meanwhile_is_said_at_its_racket()
    {
        _street.Records.Job(_second);

        Assert.Equal("Rackets[1]", _street.Refused<NotAnnounced>(() => Store.Add(Who.Shop, _odalys, Entry((_street.Racket, Order()), (_second, null)))).Field);
    }

    [Fact]
    public void Racket_of_another_household_is_not_there_and_nothing_is_written()
    {
        var theirs = _street.Records.Racket(_street.Records.Player(_street.Ewan, "Bo Lockyer"));
        var before = _street.Database.Dump();

        Assert.IsType<Outcome.Absent>(Store.Add(Who.Shop, _odalys, Entry((_street.Racket, Order()), (theirs, Order()))));

        Assert.Equal(before, _street.Database.Dump());
    }

    [Fact]
    public void Nothing_ticked_is_said()
    {
        _street.Refused<NoRacketChosen>(() => Store.Add(Who.Shop, _odalys, Entry()));
    }

    [Fact]
    public void Payers_rackets_are_those_of_all_their_clients_and_resting_ones_stay_out()
    {
        var theirs = _street.Records.Racket(_street.Records.Player(_street.Ewan, "Bo Lockyer"));
        _street.Records.Change("""
            INSERT INTO payer (name) VALUES ('Eastmere Academy');
            UPDATE client SET payer_id = (SELECT id FROM payer);
            UPDATE racket SET state = 'Resting' WHERE id = @_second;
            """, new { _second });
        var academy = Party.Payer(1);

        Assert.Equal(new[] { _street.Racket, _sisters, theirs }.Order(), Store.Rackets(Who.Shop, academy).Select(racket => racket.Id).Order());

        Assert.IsType<Outcome.Done>(Store.Add(Who.Shop, academy, Entry((_sisters, Order()), (theirs, Order()))));
        Assert.Equal(2, Together.Get(Who.Shop, academy)!.Waiting.Count());
    }
}
