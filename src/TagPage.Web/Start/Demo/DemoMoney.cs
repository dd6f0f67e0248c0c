using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Strings;
using TagPage.Records.Clients;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>The invented shop's price list, the lines of what is on its bench, a part that somebody paid, and a bill.</summary>
public sealed class DemoMoney(PriceListStore prices, StringStore strings, BenchStore bench, ChargeStore charges, PaymentStore payments, BillStore bills, PayerStore payers, ShopClock clock)
{
    private const long PartMinor = 1000;

    public void Set()
    {
        Done(prices.Save(Who.Shop, List()));
        var list = prices.Get();
        foreach (var job in bench.Open().Concat(bench.Ready()).Where(job => job is { PriceMinor: not null, PaidOn: null }))
            Done(charges.Save(Who.Shop, job.Id, job.Version, list.Lines(Priced(job), job.PriceMinor)));
        if (bench.Ready().FirstOrDefault(job => job.PaidOn is null && job.PriceMinor > PartMinor) is { } ready)
            Done(payments.PayJob(Who.Shop, ready.Id, new PaymentEntry { FormKey = FormKey.New(), PaidOn = clock.Today, Method = PaymentMethod.Cash, AmountMinor = PartMinor }));
        Bill();
    }

    /// <summary>The month of the newest stringing that has to be billed to somebody who pays for others.</summary>
    private void Bill()
    {
        foreach (var party in payers.List().Select(payer => Party.Payer(payer.Id)))
            if (bills.Months(Who.Shop, party) is [var newest, ..])
            {
                Done(bills.Make(Who.Shop, party, newest.FromOn));
                return;
            }
    }

    private PriceList List() => new()
    {
        LabourMinor = 1600,
        BadmintonMinor = 1400,
        TaxBp = 2000,
        TaxNumber = "GB 000 0000 00",
        Strings = strings.List().ToDictionary(s => s.Id, s => SetOf(s.Material)),
        Extras =
        [
            new ExtraPrice { Kind = ChargeKind.Grip, AmountMinor = 650 },
            new ExtraPrice { Kind = ChargeKind.Grommets, AmountMinor = 900 },
            new ExtraPrice { Kind = ChargeKind.Rush, AmountMinor = 500 },
            new ExtraPrice { Kind = ChargeKind.Extra, Name = "Stencil", AmountMinor = 200 },
        ],
    };

    private static StringPrice SetOf(Material material) => material switch
    {
        Material.NaturalGut => new StringPrice(3500, null),
        Material.Multifilament => new StringPrice(1200, 110),
        Material.Polyester => new StringPrice(1200, 105),
        Material.Aramid => new StringPrice(1100, null),
        _ => new StringPrice(700, 60),
    };

    private static PricedJob Priced(JobRow job) => new()
    {
        Sport = job.Sport,
        MainsId = job.MainsId,
        CrossesId = job.CrossesId,
        MainsByShop = job.MainsSuppliedBy == Supplier.Shop,
        CrossesByShop = job.CrossesSuppliedBy == Supplier.Shop,
    };
}
