using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

/// <summary>Lengths of 3GPP TS 23.038 and TS 23.040; the character tables are compared with the tests' own.</summary>
public sealed class SmsTests
{
    [Theory]
    [InlineData('a', 160, 1)]
    [InlineData('a', 161, 2)]
    [InlineData('a', 306, 2)]
    [InlineData('a', 307, 3)]
    [InlineData('€', 80, 1)]
    [InlineData('€', 81, 2)]
    // 76 of them fill 152 of 153 septets; an escape is not parted from its letter.
    [InlineData('€', 152, 2)]
    [InlineData('€', 153, 3)]
    [InlineData('字', 70, 1)]
    [InlineData('字', 71, 2)]
    [InlineData('字', 134, 2)]
    [InlineData('字', 135, 3)]
    public void Parts_are_counted_as_the_network_counts(char character, int times, int parts) =>
        Assert.Equal(parts, Sms.Of(new string(character, times)).Parts);

    [Fact]
    public void Pair_of_surrogates_is_not_cut_in_two() => Assert.Equal(3, Sms.Of(string.Concat(Enumerable.Repeat("🎾", 67))).Parts);

    [Fact]
    public void One_curly_quote_makes_the_whole_text_UCS2()
    {
        Assert.False(Sms.Of("Runa’s").IsGsm7);
        Assert.Equal("Runa's Otsu é", Sms.Fold("Runa’s Ōtsu é"));
    }

    [Fact]
    public void Every_character_of_the_first_planes_is_judged_as_the_tests_own_table_does()
    {
        for (var c = '\u0001'; c < '\u2100'; c++)
            Assert.Equal(Gsm7.Length(c.ToString()) is not null, Sms.Fits(c.ToString()));
    }
}
