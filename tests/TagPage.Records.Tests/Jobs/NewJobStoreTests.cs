using TagPage.Core.Jobs;
using TagPage.Core.Strings;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

public sealed class NewJobStoreTests : IDisposable
{
    private readonly Street _street = new();

    private NewJobStore Store => new(_street.Database, new ShopStore(_street.Database), _street.Clock);

    private NewJobEntry Order() => new()
    {
        FormKey = FormKey.New(),
        MainsId = _street.Records.Kind(),
        MainsTension = 24.5m,
        ReceivedOn = Street.Today,
    };

    private JobRow Get(Outcome outcome) => new JobStore(_street.Database).Get(Who.Shop, Assert.IsType<Outcome.Done>(outcome).Id)!;

    private IReadOnlyList<StringStore.Row> Catalogue => new StringStore(_street.Database, _street.Time).List();

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Many_counters_at_once_give_every_job_its_own_ticket_number()
    {
        var racket = _street.Racket;
        var orders = Enumerable.Range(0, 24).Select(_ => Order()).ToList();

        var tickets = orders.AsParallel().WithDegreeOfParallelism(4).Select(o => Get(Store.Add(Who.Shop, racket, o)).Ticket).Order().ToList();

        Assert.Equal(Enumerable.Range(1002, 24).Select(n => (long)n), tickets);
    }

    [Fact]
    public void Crosses_left_empty_are_like_the_mains()
    {
        var job = Get(Store.Add(Who.Shop, _street.Racket, Order() with { MainsSuppliedBy = Supplier.Client }));

        Assert.Equal((job.MainsId, job.Mains, Supplier.Client), (job.CrossesId, job.Crosses, job.CrossesSuppliedBy));
    }

    [Theory]
    [InlineData(NewStringPlace.Both, "Marram Soft", "Marram Soft")]
    [InlineData(NewStringPlace.Mains, "Marram Soft", "Heron Spin")]
    [InlineData(NewStringPlace.Crosses, "Heron Spin", "Marram Soft")]
    public void String_typed_in_with_the_job_goes_into_the_catalogue_and_where_it_was_meant(NewStringPlace place, string mains, string crosses)
    {
        var order = Order() with { NewString = Marram(place), CrossesId = _street.Records.Kind() };

        var job = Get(Store.Add(Who.Shop, _street.Racket, order));

        Assert.Equal((mains, crosses), (job.MainsName, job.CrossesName));
        Assert.Contains(Catalogue, s => s is { Name: "Marram Soft", GaugeMm: 1.3m, Offered: true });
    }

    [Fact]
    public void String_typed_in_again_is_the_one_in_the_catalogue()
    {
        var known = _street.Records.Kind("Marram Soft", "Multifilament", 1.3m);

        var job = Get(Store.Add(Who.Shop, _street.Racket, Order() with { NewString = Marram(NewStringPlace.Both) with { Name = "marram soft" } }));

        Assert.Equal(known, job.MainsId);
    }

    [Fact]
    public void Refused_job_leaves_no_string_behind()
    {
        var order = Order() with { NewString = Marram(NewStringPlace.Both), OldEndedHow = BedEnd.Wear, OldEndedOn = new(2026, 10, 1) };

        var refused = Assert.IsType<Outcome.Refused>(Store.Add(Who.Shop, _street.Racket, order));

        Assert.Equal("OldEndedOn", refused.Why.Field);
        Assert.DoesNotContain(Catalogue, s => s.Name == "Marram Soft");
    }

    [Fact]
    public void How_the_old_strings_ended_is_written_to_the_job_that_put_them_in()
    {

        Store.Add(Who.Shop, _street.Racket, Order() with { OldEndedHow = BedEnd.Wear });

        var old = new JobStore(_street.Database).Get(Who.Shop, _street.Strung)!;
        Assert.Equal((BedEnd.Wear, Street.Today), (old.EndedHow, old.EndedOn));
    }

    [Fact]
    public void Unknown_racket_and_unknown_string_are_told_apart()
    {
        Assert.IsType<Outcome.Absent>(Store.Add(Who.Shop, 99, Order()));
        var refused = Assert.IsType<Outcome.Refused>(Store.Add(Who.Shop, _street.Racket, Order() with { MainsId = 99 }));
        Assert.Equal("MainsId", refused.Why.Field);
    }

    private static NewStringEntry Marram(NewStringPlace place) =>
        new() { Name = "Marram Soft", Material = Material.Multifilament, GaugeMm = 1.3m, Place = place };
}
