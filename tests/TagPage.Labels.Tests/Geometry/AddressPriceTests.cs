using TagPage.Labels.Geometry;

namespace TagPage.Labels.Tests.Geometry;

public class AddressPriceTests
{
    // ISO/IEC 18004, alphanumeric capacity at M: version 2 holds 38, 3 holds 61, 4 holds 90. A tag's address is the shop's
    // own and 14 characters: /T/ and the code.
    [Theory]
    [InlineData("https://r.tt", 26, 2, 12, null)]
    [InlineData("https://tag.example", 33, 2, 5, null)]
    [InlineData("https://sixteen1.example", 38, 2, 0, null)]
    [InlineData("https://seventee.example1", 39, 3, 22, 1)]
    [InlineData("https://tag.strings.example.org", 45, 3, 16, 7)]
    [InlineData("https://a-quite-long-name.of-a-shop.in-a-long-town.example", 72, 4, 18, 11)]
    public void The_shops_address_has_its_price_in_characters(string address, int length, int version, int spare, int? fewer)
    {
        var price = AddressPrice.Of(address);
        Assert.NotNull(price);
        Assert.Equal((length, version, spare, fewer), (price.Length, price.Version, price.Spare, price.FewerForSmaller));
    }

    [Theory]
    [InlineData("https://straße.example")]
    [InlineData("https://under_score.example")]
    [InlineData("")]
    public void An_address_that_no_square_holds_has_no_price(string address) => Assert.Null(AddressPrice.Of(address));

    [Fact]
    public void An_address_longer_than_a_square_takes_has_no_price() => Assert.Null(AddressPrice.Of(new string('A', 190)));
}
