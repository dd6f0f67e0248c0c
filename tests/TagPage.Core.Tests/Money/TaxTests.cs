using TagPage.Core.Money;

namespace TagPage.Core.Tests.Money;

public sealed class TaxTests
{
    // By hand: 24.50 with 20 % is 24.50 × 20 / 120 = 4.08333…; 10.50 with 5 % is exactly 0.50; 1.03 with 100 % is 0.515, a half.
    [Theory]
    [InlineData(2450, 2000, 408)]
    [InlineData(1050, 500, 50)]
    [InlineData(103, 10_000, 52)]
    [InlineData(-103, 10_000, -52)]
    [InlineData(101, 10_000, 51)]
    [InlineData(2450, 0, 0)]
    [InlineData(0, 2000, 0)]
    [InlineData(10_770, 770, 770)]
    public void Tax_within_an_amount_is_rounded_to_the_unit_halves_away_from_zero(long gross, int rate, long tax) => Assert.Equal(tax, Tax.Within(gross, rate));

    [Fact]
    public void Bill_rounds_once_for_each_rate_and_not_line_by_line()
    {
        // Three times 0.10 with 20 %: a line has 0.016…, rounded 0.02, three of them 0.06; the bill has 0.30 × 20 / 120 = 0.05.
        var part = Assert.Single(Tax.Of([(10, 2000), (10, 2000), (10, 2000)]));

        Assert.Equal((30, 5, 25), (part.Gross, part.Amount, part.Net));
        Assert.Equal(6, 3 * Tax.Within(10, 2000));
    }

    [Fact]
    public void Rates_of_a_bill_stand_apart_the_highest_first()
    {
        var parts = Tax.Of([(1000, 500), (2400, 2000), (-100, 500), (700, 0)]);

        Assert.Equal([new TaxPart(2000, 2400, 400), new TaxPart(500, 900, 43), new TaxPart(0, 700, 0)], parts);
    }

    [Fact]
    public void Net_and_tax_give_the_gross_and_the_tax_is_never_further_than_half_a_unit_off()
    {
        var random = new Random(2006);
        for (var i = 0; i < 5000; i++)
        {
            var (gross, rate) = (random.NextInt64(-MinorUnits.Most, MinorUnits.Most), random.Next(0, Tax.Whole + 1));
            var part = new TaxPart(rate, gross, Tax.Within(gross, rate));

            Assert.Equal(gross, part.Net + part.Amount);
            Assert.True(Math.Abs(part.Amount - (decimal)gross * rate / (Tax.Whole + rate)) <= 0.5m);
            Assert.Equal(-part.Amount, Tax.Within(-gross, rate));
        }
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(10_001)]
    public void Rate_that_no_tax_has_throws(int rate) => Assert.Throws<ArgumentOutOfRangeException>(() => Tax.Within(100, rate));
}
