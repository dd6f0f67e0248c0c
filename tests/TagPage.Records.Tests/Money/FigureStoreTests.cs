using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Money;

public sealed class FigureStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly Till _till;

    public FigureStoreTests() => _till = new Till(_street);

    private FigureStore Figures => new(_street.Database);

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Month_has_what_was_strung_what_came_in_and_the_days_it_took()
    {
        var job = _street.Records.Job(_street.Racket, strungOn: new(2026, 11, 20));
        _street.Records.Change("UPDATE job SET received_on = '2026-11-15' WHERE id = @job", new { job });
        _till.Payments.PayJob(Who.Shop, job, Till.Paid(1000) with { PaidOn = new(2026, 10, 31) });
        _till.Payments.PayJob(Who.Shop, job, Till.Paid());
        _till.Payments.PayJob(Who.Shop, _street.Strung, Till.Paid());
        _till.Payments.TakeBack(Who.Shop, 3);

        var year = Figures.Year(Who.Shop, 2026);

        Assert.Equal(Enumerable.Range(1, 12), year.Select(m => m.Number));
        Assert.Equal((0, 0, 1000, null), (year[9].Jobs, year[9].ChargedMinor, year[9].IncomeMinor, year[9].Days));
        Assert.Equal((2, 4900, 1450, 2.5), (year[10].Jobs, year[10].ChargedMinor, year[10].IncomeMinor, year[10].Days));
        Assert.All(Figures.Year(Who.Shop, 2025), m => Assert.Equal((0, 0), (m.Jobs, m.IncomeMinor)));
    }

    [Fact]
    public void Strings_of_the_shop_count_by_the_racket_and_the_clients_own_do_not()
    {
        _street.Records.Change("UPDATE job SET crosses_supplied_by = 'Client'");
        Assert.Equal(("Heron Spin", 0.5), (Assert.Single(Figures.Strings(Who.Shop, 2026)).Name, Figures.Strings(Who.Shop, 2026)[0].Sets));
    }

    [Fact]
    public void Those_who_were_here_and_are_no_more_are_named_and_those_never_here_are_not()
    {
        Assert.Empty(Figures.StayAway(Who.Shop, new(2026, 10, 1)));
        Assert.Equal("Odalys Ferran", Assert.Single(Figures.StayAway(Who.Shop, new(2026, 12, 1))).Name);
    }

    [Fact]
    public void Client_sees_what_they_pay_themselves_for_what_is_strung()
    {
        _street.Records.Job(_street.Racket);
        _till.Payments.PayJob(Who.Shop, _street.Strung, Till.Paid(450));
        var owed = new OwedStore(_street.Database);

        Assert.Equal((2000, "1001"), (owed.OfClient(Who.Client(_street.Odalys))!.OwedMinor, owed.OfClient(Who.Client(_street.Odalys))!.Tickets));
        Assert.Null(owed.OfClient(Who.Client(_street.Ewan)));
        _till.Academy();
        Assert.Null(owed.OfClient(Who.Client(_street.Odalys)));
    }

    [Fact]
    public void Accountant_gets_each_payment_with_its_tickets_and_each_charge_by_tax_rate()
    {
        _till.Charges.Save(Who.Shop, _street.Strung, 1, [Till.Line(ChargeKind.Labour, 1800) with { TaxBp = 2000 }, Till.Line(ChargeKind.Grip, 600) with { TaxBp = 500 }, Till.Line(ChargeKind.Rush, 200) with { TaxBp = 2000 }]);
        _till.Payments.PayJob(Who.Shop, _street.Strung, Till.Paid());

        Assert.Equal((2600, "1001", "Odalys Ferran"), (Figures.Payments(Who.Shop, 2026)[0].AmountMinor, Figures.Payments(Who.Shop, 2026)[0].Tickets, Figures.Payments(Who.Shop, 2026)[0].FromName));
        Assert.Equal([(500, 600), (2000, 2000)], Figures.Charges(Who.Shop, 2026).Select(c => (c.TaxBp, c.GrossMinor)));
    }
}
