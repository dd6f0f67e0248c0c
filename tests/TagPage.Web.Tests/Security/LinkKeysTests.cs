using TagPage.Records.Outbox;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>What a link is derived from.</summary>
public sealed class LinkKeysTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Code_of_a_record_says_nothing_about_the_code_of_another_under_the_same_number()
    {
        var keys = _shop.Get<LinkTokens>();

        var codes = Enumerable.Range(0, 50).Select(n => keys.Digits(1, $"{n:x32}")).Distinct();

        Assert.True(codes.Count() > 45);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1")]
    [InlineData("g0000000000000000000000000000000")]
    [InlineData("000000000000000000000000000000000000")]
    public void Secret_that_is_not_128_bits_makes_no_link(string secret) =>
        Assert.Throws<ArgumentException>(() => _shop.Get<LinkTokens>().Token(LinkPurpose.OwnPage, 1, secret));

    [Fact]
    public void Token_of_one_purpose_number_or_secret_fits_no_other()
    {
        var keys = _shop.Get<LinkTokens>();
        var secrets = new[] { new string('0', 32), "01" + new string('0', 30), new string('0', 31) + "1" };
        var all = Enum.GetValues<LinkPurpose>().SelectMany(purpose => new long[] { 1, 11, 256, long.MaxValue }.SelectMany(id => secrets.Select(s => (purpose, id, s)))).ToList();

        Assert.Equal(all.Count, all.Select(a => keys.Token(a.purpose, a.id, a.s)).Distinct().Count());
        foreach (var (purpose, id, secret) in all)
            Assert.Equal(1, all.Count(a => keys.Fits(keys.Token(purpose, id, secret), a.purpose, a.id, a.s)));
    }
}
