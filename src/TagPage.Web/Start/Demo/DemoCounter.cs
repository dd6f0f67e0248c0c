using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Rackets;
using TagPage.Labels.Photos;
using TagPage.Records.Condition;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Visits;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>What happened over the invented counter besides stringing: visits, restrings paid in advance, and a racket looked at as it came in.</summary>
public sealed class DemoCounter(VisitStore visits, PrepaidStore prepaid, ConditionStore conditions, PhotoStore photos, PriceListStore prices, BenchStore bench, ShopStore shops, ShopClock clock)
{
    /// <summary>One that was strung lately, and one that is due no sooner.</summary>
    private const long Gripped = 2, Waiting = 20;

    private const int Restrings = 5;

    public void Set()
    {
        var grip = prices.Get().Extras.First(extra => extra.Kind == ChargeKind.Grip).Id;
        Done(visits.Add(Who.Shop, Gripped, new VisitEntry { FormKey = FormKey.New(), DoneOn = clock.Today.AddDays(-4), Works = [VisitWork.Grip, VisitWork.Check], Extras = [grip] }));
        Done(visits.Add(Who.Shop, Waiting, new VisitEntry { FormKey = FormKey.New(), PromisedFor = shops.Get().Opening.NextOpen(clock.Today.AddDays(1)), Works = [VisitWork.Grip, VisitWork.Grommets], Extras = [grip], Note = "white, thin" }));
        Look(bench.Open().First(job => !job.IsVisit));
        foreach (var job in bench.Open().Where(job => job is { IsVisit: false, Payer: null, Expected: false, PriceMinor: not null, PaidOn: null }).Take(1))
            Sell(job);
    }

    private void Sell(JobRow job) => Done(prepaid.Sell(Who.Shop, Party.Client(job.ClientId), new PrepaidEntry
    {
        FormKey = FormKey.New(),
        BoughtOn = clock.Today.AddDays(-30),
        Restrings = Restrings,
        Covers = PrepaidCover.LabourAndStrings,
        AmountMinor = 10_000,
        Method = PaymentMethod.Card,
    }));

    private void Look(JobRow job)
    {
        Done(conditions.Note(Who.Shop, job.Id, new ConditionEntry { Frame = PartState.Fine, Bumper = PartState.Worn, BumperWords = "scuffed at the tip", Grommets = PartState.Fine, Grip = PartState.Worn }));
        var (photo, fault) = Photo.Read(File.ReadAllBytes(Path.Combine(DemoShop.Seed, "intake.jpg")));
        if (photo is null)
            throw new InvalidOperationException($"The demo's photo was refused: {fault}");
        Done(photos.Add(Who.Shop, job.Id, FormKey.New(), [new PhotoEntry { Width = photo.Width, Height = photo.Height, Picture = photo.Picture, Small = photo.Small }]));
    }
}
