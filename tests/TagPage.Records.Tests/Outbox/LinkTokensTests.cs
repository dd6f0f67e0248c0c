using TagPage.Records.Outbox;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Outbox;

/// <summary>What a link is derived from.</summary>
public sealed class LinkTokensTests : IDisposable
{
    private readonly EmptyDatabase _home = new();

    private LinkTokens Tokens => new(_home.Folder);

    public void Dispose() => _home.Dispose();

    [Fact]
    public void Code_of_a_record_says_nothing_about_the_code_of_another_under_the_same_number()
    {
        var keys = Tokens;

        var codes = Enumerable.Range(0, 50).Select(n => keys.Digits(1, $"{n:x32}")).Distinct();

        Assert.True(codes.Count() > 45);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1")]
    [InlineData("g0000000000000000000000000000000")]
    [InlineData("000000000000000000000000000000000000")]
    public void Secret_that_is_not_128_bits_makes_no_link(string secret) =>
        Assert.Throws<ArgumentException>(() => Tokens.Token(LinkPurpose.OwnPage, 1, secret));

    [Fact]
    public void Token_of_one_purpose_number_or_secret_fits_no_other()
    {
        var keys = Tokens;
        var secrets = new[] { new string('0', 32), "01" + new string('0', 30), new string('0', 31) + "1" };
        var all = Enum.GetValues<LinkPurpose>().SelectMany(purpose => new long[] { 1, 11, 256, long.MaxValue }.SelectMany(id => secrets.Select(s => (purpose, id, s)))).ToList();

        Assert.Equal(all.Count, all.Select(a => keys.Token(a.purpose, a.id, a.s)).Distinct().Count());
        foreach (var (purpose, id, secret) in all)
            Assert.Equal(1, all.Count(a => keys.Fits(keys.Token(purpose, id, secret), a.purpose, a.id, a.s)));
    }

    [Fact]
    public void Key_outlives_a_restart_and_another_shops_key_makes_other_tokens()
    {
        using var other = new EmptyDatabase();
        var secret = new string('0', 32);
        var token = Tokens.Token(LinkPurpose.OwnPage, 1, secret);

        Assert.True(new LinkTokens(_home.Folder).Fits(token, LinkPurpose.OwnPage, 1, secret));
        Assert.False(new LinkTokens(other.Folder).Fits(token, LinkPurpose.OwnPage, 1, secret));
    }
}
