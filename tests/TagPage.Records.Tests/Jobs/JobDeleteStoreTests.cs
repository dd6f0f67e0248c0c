using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

/// <summary>A ticket goes while nothing stands on it, and its number with it.</summary>
public sealed class JobDeleteStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _job;

    public JobDeleteStoreTests() => _job = _street.Records.Job(_street.Racket);

    public void Dispose() => _street.Dispose();

    private Outcome Delete(Actor actor = Actor.Shop, long? job = null) => new JobDeleteStore(_street.Database).Delete(_street.Be(actor), job ?? _job);

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_deletes_a_ticket(Actor actor, bool allowed)
    {
        _street.Check(allowed, () => Delete(actor));
        Assert.Equal(allowed ? 1 : 2, _street.Records.Count("job"));
    }

    [Fact]
    public void Waiting_begun_and_cancelled_tickets_can_go()
    {
        _street.Records.Change("UPDATE job SET state = 'OnMachine' WHERE id = @_job", new { _job });
        _street.Check(true, () => Delete());
        var cancelled = _street.Records.Job(_street.Racket);
        _street.Records.Change("UPDATE job SET state = 'Cancelled' WHERE id = @cancelled", new { cancelled });
        _street.Check(true, () => Delete(job: cancelled));
    }

    [Fact]
    public void What_stands_on_it_is_named()
    {
        Assert.Equal(new(2026, 11, 1), _street.Refused<StringsWentIn>(() => Delete(job: _street.Strung)).StrungOn);
        _street.Records.Change("INSERT INTO job_request (job_id, asked_in) VALUES (@_job, 'OwnPage')", new { _job });
        Assert.Equal("Odalys Ferran", _street.Refused<ClientAskedFor>(() => Delete()).Client);
        _street.Records.Change("UPDATE job SET paid_on = '2026-11-25' WHERE id = @_job", new { _job });
        _street.Refused<PaidFor>(() => Delete());
        _street.Records.Change("INSERT INTO instrument (name, scale) VALUES ('gauge', 'Stiffness'); INSERT INTO reading (job_id, first, taken_on, instrument_id, value) VALUES (@_job, 1, '2026-11-25', 1, 62)", new { _job });
        _street.Refused<ReadingsOnIt>(() => Delete());
    }

    [Fact]
    public void Its_number_is_not_given_out_again()
    {
        var ticket = _street.Records.Text($"SELECT ticket FROM job WHERE id = {_job}");
        Delete();

        var shops = new ShopStore(_street.Database);
        new NewJobStore(_street.Database, shops, _street.Clock).Add(Who.Shop, _street.Racket,
            new NewJobEntry { FormKey = FormKey.New(), MainsId = _street.Records.Kind(), MainsTension = 50, ReceivedOn = Street.Today });

        Assert.Equal($"{int.Parse(ticket, System.Globalization.CultureInfo.InvariantCulture) + 1}", _street.Records.Text("SELECT MAX(ticket) FROM job"));
    }
}
