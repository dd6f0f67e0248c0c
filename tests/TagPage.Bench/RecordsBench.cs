using BenchmarkDotNet.Attributes;
using Dapper;
using TagPage.Records.DueDates;
using TagPage.Records.Jobs;
using TagPage.Records.Search;
using TagPage.Records.Storage;
using TagPage.Records.Tags;

namespace TagPage.Bench;

/// <summary>What a shop asks for all day, in a small shop, at a normal shop's far end, and far beyond.</summary>
public class RecordsBench : IDisposable
{
    private BigShop _shop = default!;
    private TagPageStore _tags = default!;
    private DueStore _due = default!;
    private BenchStore _bench = default!;
    private SearchStore _find = default!;
    private int _next;

    [Params(1_000, 10_000, 100_000)]
    public int Rackets { get; set; }

    [GlobalSetup]
    public void Fill()
    {
        _shop = new BigShop(Rackets);
        (_tags, _due, _bench, _find) = (_shop.Get<TagPageStore>(), _shop.Get<DueStore>(), _shop.Get<BenchStore>(), _shop.Get<SearchStore>());
        if (_due.List(withUnseen: false).Clients == 0)
            throw new InvalidOperationException("Nobody is due, so there is nothing to measure.");
    }

    [GlobalCleanup]
    public void Dispose()
    {
        _shop.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Another racket each time, all over the shop.</summary>
    [Benchmark]
    public object? TagPage()
    {
        _next = (_next + 7919) % Rackets;
        var code = _shop.Codes[_next];
        return (_tags.Racket(code), _tags.Stringings(code, 13));
    }

    [Benchmark]
    public object DueList() => _due.List(withUnseen: false);

    /// <summary>A player's habit changes: the write and the dates of that player's rackets, worked out before it is committed.</summary>
    [Benchmark]
    public void HabitChange() => _shop.Get<Database>().Write(c => c.Execute("UPDATE player SET times_a_week = 1 + (times_a_week + 1) % 5 WHERE id = @id", new { id = _next = 1 + (_next + 79) % (Rackets / 2) }));

    [Benchmark]
    public object BenchList() => (_bench.Open(), _bench.Ready());

    [Benchmark]
    public object FindByName() => _find.ByWords("\"player\"* AND \"ka\"*");

    [Benchmark]
    public object FindByPhone() => _find.ByPhone("4321");

    [Benchmark]
    public object? FindByTicket() => _find.ByTicket(Rackets);
}
