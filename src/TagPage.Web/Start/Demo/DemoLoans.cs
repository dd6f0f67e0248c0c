using TagPage.Records.Loans;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>The invented shop’s own rackets: one is with a client, one at the shop.</summary>
public sealed class DemoLoans(LoanRacketStore rackets, LoanStore loans, ShopClock clock)
{
    public void Set()
    {
        var first = Done(rackets.Add(Who.Shop, new LoanRacketEntry { FormKey = FormKey.New(), Name = "Pellmore Meadow 100, demo 1", Note = "grip 2, multifilament" }));
        Done(rackets.Add(Who.Shop, new LoanRacketEntry { FormKey = FormKey.New(), Name = "Corvane Gable 125, demo 2" }));
        Done(loans.Lend(Who.Shop, 1, new LoanEntry { FormKey = FormKey.New(), RacketId = first, LentOn = clock.Today.AddDays(-2), DueOn = clock.Today.AddDays(5), Note = "for a test" }));
    }
}
