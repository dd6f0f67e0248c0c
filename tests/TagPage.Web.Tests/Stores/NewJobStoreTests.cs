using TagPage.Core.Jobs;
using TagPage.Core.Strings;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Stores;

public sealed class NewJobStoreTests : IDisposable
{
    private readonly TestShop _shop = new();

    private NewJobStore Store => _shop.Get<NewJobStore>();

    private NewJobEntry Order() => new()
    {
        FormKey = FormKey.New(),
        MainsId = _shop.Records.Kind(),
        MainsTension = 24.5m,
        ReceivedOn = TestShop.Today,
    };

    private JobRow Get(Outcome outcome) => _shop.Get<JobStore>().Get(Assert.IsType<Outcome.Done>(outcome).Id)!;

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Many_counters_at_once_give_every_job_its_own_ticket_number()
    {
        var racket = _shop.Records.Family().Racket;
        var orders = Enumerable.Range(0, 24).Select(_ => Order()).ToList();

        var tickets = orders.AsParallel().WithDegreeOfParallelism(4).Select(o => Get(Store.Add(racket, o)).Ticket).Order().ToList();

        Assert.Equal(Enumerable.Range(1002, 24).Select(n => (long)n), tickets);
    }

    [Fact]
    public void Crosses_left_empty_are_like_the_mains()
    {
        var job = Get(Store.Add(_shop.Records.Family().Racket, Order() with { MainsSuppliedBy = Supplier.Client }));

        Assert.Equal((job.MainsId, job.Mains, Supplier.Client), (job.CrossesId, job.Crosses, job.CrossesSuppliedBy));
    }

    [Theory]
    [InlineData(NewStringPlace.Both, "Marram Soft", "Marram Soft")]
    [InlineData(NewStringPlace.Mains, "Marram Soft", "Heron Spin")]
    [InlineData(NewStringPlace.Crosses, "Heron Spin", "Marram Soft")]
    public void String_typed_in_with_the_job_goes_into_the_catalogue_and_where_it_was_meant(NewStringPlace place, string mains, string crosses)
    {
        var order = Order() with { NewString = Marram(place), CrossesId = _shop.Records.Kind() };

        var job = Get(Store.Add(_shop.Records.Family().Racket, order));

        Assert.Equal((mains, crosses), (job.MainsName, job.CrossesName));
        Assert.Contains(_shop.Get<StringStore>().List(), s => s is { Name: "Marram Soft", GaugeMm: 1.3m, Offered: true });
    }

    [Fact]
    public void String_typed_in_again_is_the_one_in_the_catalogue()
    {
        var known = _shop.Records.Kind("Marram Soft", "Multifilament", 1.3m);

        var job = Get(Store.Add(_shop.Records.Family().Racket, Order() with { NewString = Marram(NewStringPlace.Both) with { Name = "marram soft" } }));

        Assert.Equal(known, job.MainsId);
    }

    [Fact]
    public void Refused_job_leaves_no_string_behind()
    {
        var family = _shop.Records.Family();
        var order = Order() with { NewString = Marram(NewStringPlace.Both), OldEndedHow = BedEnd.Wear, OldEndedOn = new(2026, 10, 1) };

        var refused = Assert.IsType<Outcome.Refused>(Store.Add(family.Racket, order));

        Assert.Equal("OldEndedOn", refused.Why.Field);
        Assert.DoesNotContain(_shop.Get<StringStore>().List(), s => s.Name == "Marram Soft");
    }

    [Fact]
    public void How_the_old_strings_ended_is_written_to_the_job_that_put_them_in()
    {
        var family = _shop.Records.Family();

        Store.Add(family.Racket, Order() with { OldEndedHow = BedEnd.Wear });

        var old = _shop.Get<JobStore>().Get(family.Job)!;
        Assert.Equal((BedEnd.Wear, TestShop.Today), (old.EndedHow, old.EndedOn));
    }

    [Fact]
    public void Unknown_racket_and_unknown_string_are_told_apart()
    {
        Assert.IsType<Outcome.Absent>(Store.Add(99, Order()));
        var refused = Assert.IsType<Outcome.Refused>(Store.Add(_shop.Records.Family().Racket, Order() with { MainsId = 99 }));
        Assert.Equal("MainsId", refused.Why.Field);
    }

    private static NewStringEntry Marram(NewStringPlace place) =>
        new() { Name = "Marram Soft", Material = Material.Multifilament, GaugeMm = 1.3m, Place = place };
}
