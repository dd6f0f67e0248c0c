using TagPage.Core.Money;

namespace TagPage.Core.Tests.Money;

/// <summary>
/// The first is the reference of the examples in “Swiss Implementation Guidelines QR-bill” of SIX, as many open-source tests quote it; the
/// second stands in the tests of a public repository beside it.
/// </summary>
public sealed class QrReferenceTests
{
    [Theory]
    [InlineData("21000000000313947143000901", "210000000003139471430009017")]
    [InlineData("21570300007520033455900012", "215703000075200334559000126")]
    [InlineData("0", "000000000000000000000000000")]
    public void Check_digit_is_that_of_published_references(string digits, string reference) => Assert.Equal(reference, QrReference.Of(digits));

    [Fact]
    public void It_is_written_in_groups_of_five_from_the_right() => Assert.Equal("21 00000 00003 13947 14300 09017", QrReference.Shown("210000000003139471430009017"));

    [Fact]
    public void A_wrong_or_swapped_digit_is_noticed()
    {
        const string right = "210000000003139471430009017";
        for (var i = 0; i < 26; i++)
        {
            var wrong = right[..i] + (char)('0' + (right[i] - '0' + 1) % 10) + right[(i + 1)..];
            Assert.NotEqual(wrong, QrReference.Of(wrong[..26]));
        }
        Assert.NotEqual("120000000003139471430009017", QrReference.Of("12000000000313947143000901"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("12a")]
    [InlineData("123456789012345678901234567")]
    public void Nothing_else_becomes_a_reference(string digits) => Assert.Throws<ArgumentException>(() => QrReference.Of(digits));
}
