using TagPage.Core.Tags;
using TagPage.Records.Demo;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Import;

namespace TagPage.Web.Start.Demo;

/// <summary>The invented shop: its records come in at the first start, and their dates move on at later ones.</summary>
public sealed class DemoShop(DemoStore demo, DemoFinder finder, DemoGuides guides, DemoReadings readings, DemoEvent fair, DemoMoney money, DemoStock stock, DemoStops stops, DemoLoans loans, DemoMachines machines, DemoFrames frames, DemoCounter counter, ShopStore shops, ShopClock clock, DataFolder folder)
{
    /// <summary>Where the files lie, beside the program.</summary>
    public static string Seed { get; } = Path.Combine(AppContext.BaseDirectory, "seed-demo");

    /// <summary>The tag to try first: that of the first racket.</summary>
    public TagCode Showcase => demo.Showcase;

    /// <summary>The tag of the lost racket; null when it is back.</summary>
    public TagCode? Lost => demo.Lost?.Code;

    /// <exception cref="CannotStartException">The data folder holds a shop of its own.</exception>
    public void Prepare()
    {
        var isNew = demo.Day is null;
        if (isNew)
        {
            Fill();
            guides.Write();
        }
        if (demo.MoveTo(clock.Today))
            demo.PromiseOpenDays(shops.Get().Opening);
        if (!isNew)
            return;
        readings.Take();
        money.Set();
        stock.Set();
        stops.Set();
        loans.Set();
        machines.Set();
        frames.Set();
        counter.Set();
        finder.Tell();
        fair.Open();
    }

    private void Fill()
    {
        if (shops.Get().Version > 0)
            throw new CannotStartException($"{folder.Root} holds a shop of its own, which the demo leaves alone. Name another folder: --TagPage:DataFolder=…");
        var reading = ImportReader.Read(ImportFiles.From(Seed), shop: null, clock.Today);
        if (reading.Problems.Count > 0)
            throw new CannotStartException($"The demo’s files in {Seed} are not as they should be.\n{string.Join('\n', reading.Problems.Kept)}");
        demo.Bring(reading.Batch, FormKey.New(), reading.Batch.AsOf ?? clock.Today);
    }
}
