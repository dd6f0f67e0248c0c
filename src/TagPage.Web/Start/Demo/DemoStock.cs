using TagPage.Core.Strings;
using TagPage.Records.Jobs;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>What the invented shop has of the strings on its bench: reels of polyester, sets of everything else.</summary>
public sealed class DemoStock(StockStore stock, StringStore strings, BenchStore bench)
{
    public void Set()
    {
        var wanted = bench.Open().SelectMany(job => new[] { job.MainsId, job.CrossesId }).ToHashSet();
        foreach (var kind in strings.List().Where(row => wanted.Contains(row.Id)))
            Keep(kind);
    }

    private void Keep(StringStore.Row kind)
    {
        var length = new StockLength(kind.Material == Material.Polyester ? StockUnit.Metre : StockUnit.Set, 1200);
        Done(stock.Keep(Who.Shop, kind.Id, new StockEntry { Unit = length.Unit, RacketCm = length.RacketCm, ReorderCm = 3 * length.RacketCm }));
        Done(stock.Buy(Who.Shop, kind.Id, new BoughtEntry { FormKey = FormKey.New(), Centimetres = length.Centimetres(length.Unit == StockUnit.Metre ? 200 : 20), CostMinor = 12_000 }));
        Done(stock.Count(Who.Shop, kind.Id, new CountEntry { FormKey = FormKey.New(), Centimetres = length.Centimetres(length.Unit == StockUnit.Metre ? 171.5m : 17), Note = "first count" }));
    }
}
