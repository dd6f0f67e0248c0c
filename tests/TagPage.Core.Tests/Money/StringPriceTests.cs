using TagPage.Core.Money;
using TagPage.Core.Sports;

namespace TagPage.Core.Tests.Money;

public sealed class StringPriceTests
{
    [Theory]
    [InlineData(150, 600, 900)]
    [InlineData(133, 650, 865)]
    [InlineData(99, 50, 50)]
    [InlineData(0, 600, 0)]
    [InlineData(100_000_000, 100_000, 100_000_000_000)]
    public void Piece_by_the_metre_costs_its_length_halves_up(long metre, int centimetres, long price) => Assert.Equal(price, StringPrice.ByMetre(metre, centimetres));

    [Theory]
    [InlineData(900, 450)]
    [InlineData(901, 451)]
    public void Half_a_set_is_half_its_price(long set, long half) => Assert.Equal(half, StringPrice.HalfOf(set));

    // Common practice, from memory: a tennis racket takes 10 to 12 m, badminton and squash 9 to 10 m.
    [Theory]
    [InlineData(Sport.Tennis, 1000, 1200)]
    [InlineData(Sport.Badminton, 900, 1000)]
    [InlineData(Sport.Squash, 900, 1000)]
    public void Usual_length_is_one_that_a_racket_takes(Sport sport, int least, int most) => Assert.InRange(StringPrice.UsualCentimetres(sport), least, most);
}
