using TagPage.Records.Shop;

namespace TagPage.Records.Tests.Shop;

/// <summary>Numbers as they are typed. Those of London, of Paris and of British mobiles are from the ranges that Ofcom and Arcep keep for fiction, 555-0100 from that of the North American plan; the Italian one is libphonenumber’s example of a number that begins with zero.</summary>
public sealed class PhonesTests
{
    [Theory]
    [InlineData("020 7946 0958", "GB", "+442079460958")]
    [InlineData("+33 1 99 00 12 34", "GB", "+33199001234")]
    [InlineData("07700 900123", "GB", "+447700900123")]
    [InlineData("0163 123", "GB", null)]
    [InlineData("06 698 12345", "IT", "+390669812345")]
    [InlineData("555-0100", "US", null)]
    [InlineData("(212) 555-0100", "US", "+12125550100")]
    public void Number_that_can_be_called_from_anywhere_is_read(string typed, string country, string? number) => Assert.Equal(number, Phones.Read(typed, country));
}
