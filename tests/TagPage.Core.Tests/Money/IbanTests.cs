using TagPage.Core.Money;

namespace TagPage.Core.Tests.Money;

public sealed class IbanTests
{
    // The examples that the registry of ISO 13616 prints for these countries; nobody's accounts.
    [Theory]
    [InlineData("DE89370400440532013000", "DE89370400440532013000")]
    [InlineData("ch93 0076 2011 6238 5295 7", "CH9300762011623852957")]
    [InlineData("FR14 2004 1010 0505 0001 3M02 606", "FR1420041010050500013M02606")]
    [InlineData("NO9386011117947", "NO9386011117947")]
    [InlineData("AT61 1904 3002 3457 3201", "AT611904300234573201")]
    public void Number_is_read_however_it_was_typed(string typed, string iban) => Assert.Equal(iban, Iban.Read(typed));

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("DE89370400440532013001")]
    [InlineData("DE98370400440532013000")]
    [InlineData("DE8937040044053201300")]
    [InlineData("8937DE0400440532013000")]
    [InlineData("DE89-3704-0044-0532-0130-00")]
    [InlineData("DÉ89370400440532013000")]
    [InlineData("DE8937040044053201300012345678901234567890")]
    public void What_is_no_number_is_none(string? typed) => Assert.Null(Iban.Read(typed));

    /// <summary>What MOD 97-10 is for: any one character wrong, any two neighbours swapped.</summary>
    [Fact]
    public void One_wrong_or_two_swapped_digits_are_noticed()
    {
        const string right = "DE89370400440532013000";
        for (var i = 2; i < right.Length; i++)
        {
            foreach (var other in "0123456789".Where(c => c != right[i]))
                Assert.Null(Iban.Read(right[..i] + other + right[(i + 1)..]));
            if (i + 1 < right.Length && right[i] != right[i + 1])
                Assert.Null(Iban.Read(right[..i] + right[i + 1] + right[i] + right[(i + 2)..]));
        }
    }

    [Fact]
    public void On_paper_it_stands_in_groups_of_four() => Assert.Equal("DE89 3704 0044 0532 0130 00", Iban.Shown("DE89370400440532013000"));
}
