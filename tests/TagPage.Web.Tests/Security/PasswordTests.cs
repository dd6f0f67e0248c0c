using TagPage.Web.Http.SignIn.Passwords;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

public sealed class PasswordTests : IAsyncLifetime
{
    private const string Next = "slow barges under bridges";

    private readonly TestShop _shop = new();

    public async ValueTask InitializeAsync() => await _shop.OwnedByRuna();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Theory]
    [InlineData("password1234")]
    [InlineData("P@ssw0rd!2026")]
    [InlineData("passwordpassword")]
    [InlineData("qwertyuiop123")]
    [InlineData("1q2w3e4r5t6y")]
    [InlineData("1qaz2wsx3edc")]
    [InlineData("123456789012")]
    [InlineData("210987654321")]
    [InlineData("aaaaaaaaaaaa")]
    [InlineData("abcabcabcabc")]
    [InlineData("abcdefghijkl")]
    [InlineData("iloveyou1234")]
    [InlineData("letmeinletmein")]
    [InlineData("Welcome 2026!!")]
    [InlineData("tennis racket 1")]
    [InlineData("Summer2026Summer")]
    [InlineData("runa-runa-runa-1")]
    [InlineData("Bench by the Mill")]
    public void Common_password_is_seen_through(string password) => Assert.True(Guessable.IsEasy(password, "Runa", "Bench by the Mill"));

    [Theory]
    [InlineData("four grey herons walking")]
    [InlineData("correct horse battery staple")]
    [InlineData("kq7vX2mPz9Lw")]
    [InlineData("583920174665")]
    [InlineData("зимний вечер у реки")]
    [InlineData("古い港の朝の霧と鐘の音")]
    [InlineData("tennis and marmalade")]
    public void Password_of_ones_own_making_passes(string password) => Assert.False(Guessable.IsEasy(password, "Runa", "Bench by the Mill"));

    [Fact]
    public async Task Long_passwords_and_every_character_are_taken_as_typed()
    {
        var password = "  ünïcode 🎾 " + new string('x', 40) + " slow barges under bridges  ";
        var runa = _shop.Stranger();
        await runa.SignIn();

        await Change(runa, Runa.Password, password);

        Assert.Equal("/shop", (await _shop.Stranger().SignIn(password: password)).Location);
        Assert.Null((await _shop.Stranger().SignIn(password: password.Trim())).Location);
    }

    [Fact]
    public async Task Changing_the_password_signs_out_every_other_browser_and_keeps_this_one()
    {
        var (tablet, phone) = (_shop.Stranger(), _shop.Stranger());
        await tablet.SignIn();
        await phone.SignIn();

        var answer = await Change(tablet, Runa.Password, Next);

        Assert.Equal("/account/security", answer.Location);
        Assert.True(await tablet.IsSignedIn());
        Assert.False(await phone.IsSignedIn());
        Assert.Null((await phone.SignIn()).Location);
        Assert.Equal("/shop", (await phone.SignIn(password: Next)).Location);
    }

    [Theory]
    [InlineData("four blue herons walking", Next, "This is not the password you sign in with.")]
    [InlineData(Runa.Password, "short", "Use at least 12 characters. Four words that do not belong together are easy to remember.")]
    [InlineData(Runa.Password, "password1234", "This password is easy to guess. Use words that have nothing to do with you, the shop or the sport.")]
    [InlineData(Runa.Password, "", "Enter the new password.")]
    public async Task Refused_change_leaves_the_old_password_and_everybody_signed_in(string present, string next, string sentence)
    {
        var (tablet, phone) = (_shop.Stranger(), _shop.Stranger());
        await tablet.SignIn();
        await phone.SignIn();

        var answer = await Change(tablet, present, next);

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.True(await phone.IsSignedIn());
        Assert.Equal("/shop", (await _shop.Stranger().SignIn()).Location);
    }

    [Fact]
    public async Task Stranger_is_sent_to_sign_in_before_changing_a_password() =>
        Assert.StartsWith("/account/sign-in", (await _shop.Stranger().Get("/account/password")).Headers.Location?.ToString(), StringComparison.Ordinal);

    private static async Task<WebPage> Change(Visitor visitor, string present, string next) =>
        await visitor.Send(await visitor.Open("/account/password"), ("Input.PresentPassword", present), ("Input.NewPassword", next));
}
