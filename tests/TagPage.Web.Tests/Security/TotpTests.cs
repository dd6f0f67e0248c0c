using System.Text;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using TagPage.Records.Accounts;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>Codes of authenticator apps against the standards’ own tables, and against the framework’s own check.</summary>
public sealed class TotpTests
{
    private static readonly byte[] Key = Encoding.ASCII.GetBytes("12345678901234567890");

    // RFC 6238, appendix B, the rows of SHA-1.
    [Theory]
    [InlineData(59, "94287082")]
    [InlineData(1111111109, "07081804")]
    [InlineData(1111111111, "14050471")]
    [InlineData(1234567890, "89005924")]
    [InlineData(2000000000, "69279037")]
    [InlineData(20000000000, "65353130")]
    public void Code_of_a_time_is_that_of_the_standard(long seconds, string code) =>
        Assert.Equal(code, Totp.Code(Key, Totp.StepAt(DateTimeOffset.FromUnixTimeSeconds(seconds)), digits: 8));

    // RFC 4226, appendix D.
    [Theory]
    [InlineData(0, "755224")]
    [InlineData(1, "287082")]
    [InlineData(2, "359152")]
    [InlineData(3, "969429")]
    [InlineData(4, "338314")]
    [InlineData(5, "254676")]
    [InlineData(6, "287922")]
    [InlineData(7, "162583")]
    [InlineData(8, "399871")]
    [InlineData(9, "520489")]
    public void Six_digits_of_a_count_are_those_of_the_standard(long count, string code) => Assert.Equal(code, Totp.Code(Key, count));

    // RFC 4648, section 10.
    [Theory]
    [InlineData("", "")]
    [InlineData("MY", "f")]
    [InlineData("MZXQ", "fo")]
    [InlineData("MZXW6", "foo")]
    [InlineData("MZXW6YQ", "foob")]
    [InlineData("MZXW6YTB", "fooba")]
    [InlineData("MZXW6YTBOI", "foobar")]
    public void Written_key_is_read_as_the_standard_says(string written, string key) => Assert.Equal(key, Encoding.ASCII.GetString(Totp.KeyOf(written)));

    [Fact]
    public void What_is_no_base_32_is_no_key() => Assert.Throws<FormatException>(() => Totp.KeyOf("MZXW1"));

    [Fact]
    public async Task Code_made_here_is_taken_by_the_frameworks_own_check_and_another_is_not()
    {
        using var shop = new TestShop();
        using var scope = shop.Services.CreateScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        var runa = new Account { Name = Runa.Name };
        var (key, check) = (users.GenerateNewAuthenticatorKey(), new AuthenticatorTokenProvider<Account>());
        runa.AuthenticatorKey = shop.Get<AuthenticatorKeys>().Seal(key);
        var code = Totp.Code(Totp.KeyOf(key), Totp.StepAt(TimeProvider.System.GetUtcNow()));

        Assert.True(await check.ValidateAsync("TwoFactor", code, users, runa));
        Assert.False(await check.ValidateAsync("TwoFactor", Totp.Code(Totp.KeyOf(key), 1), users, runa));
    }
}
