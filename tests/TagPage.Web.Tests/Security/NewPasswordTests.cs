using TagPage.Records.Accounts;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Start.CommandLine;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

public sealed class NewPasswordTests : IAsyncLifetime
{
    private const string Better = "seven quiet barges drifting";

    private readonly TestShop _shop = new();

    public async ValueTask InitializeAsync() => await _shop.OwnedByRuna();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Owner_who_forgot_the_password_sets_a_new_one_and_is_signed_in()
    {
        var runa = _shop.Stranger();
        var form = await runa.Open(PrintedLink());
        Assert.Contains("You sign in as Runa.", form.Main, StringComparison.Ordinal);

        var answer = await runa.Send(form, ("Input.NewPassword", Better));

        Assert.Equal("/shop", answer.Location);
        Assert.True(await runa.IsSignedIn());
        Assert.Equal("/shop", (await _shop.Stranger().SignIn(password: Better)).Location);
        Assert.Null((await _shop.Stranger().SignIn()).Location);
    }

    [Fact]
    public async Task New_password_ends_the_sessions_begun_before()
    {
        var thief = _shop.Stranger();
        await thief.SignIn();
        var runa = _shop.Stranger();

        await runa.Send(await runa.Open(PrintedLink()), ("Input.NewPassword", Better));

        Assert.False(await thief.IsSignedIn());
    }

    [Fact]
    public async Task Link_works_once()
    {
        var link = PrintedLink();
        var (runa, second) = (_shop.Stranger(), _shop.Stranger());
        var form = await second.Open(link);
        await runa.Send(await runa.Open(link), ("Input.NewPassword", Better));
        var before = _shop.Database.Dump();

        var late = await second.Send(form, ("Input.NewPassword", "nine loud geese marching"));

        Assert.Contains("no longer works", late.Main, StringComparison.Ordinal);
        Assert.Contains("no longer works", (await second.Open(link)).Main, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Link_dies_after_30_minutes()
    {
        var runa = _shop.Stranger();
        var form = await runa.Open(PrintedLink());
        var before = _shop.Database.Dump();

        _shop.Clock.Advance(TimeSpan.FromMinutes(30));

        Assert.Contains("no longer works", (await runa.Send(form, ("Input.NewPassword", Better))).Main, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Newer_link_makes_the_older_one_worth_nothing_and_a_start_of_the_shop_does_not()
    {
        var (old, link) = (PrintedLink(), PrintedLink());

        Assert.Null(_shop.Get<SetUpStore>().NewToken());

        Assert.Contains("no longer works", (await _shop.Stranger().Open(old)).Main, StringComparison.Ordinal);
        Assert.Contains("You sign in as", (await _shop.Stranger().Open(link)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wrong_token_and_the_set_up_page_open_nothing()
    {
        var link = PrintedLink();

        Assert.Contains("no longer works", (await _shop.Stranger().Open(link[..^1])).Main, StringComparison.Ordinal);
        var setUp = link.Replace("new-password", "set-up", StringComparison.Ordinal);
        Assert.Contains("no longer works", (await _shop.Stranger().Open(setUp)).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "Enter the new password.")]
    [InlineData("short", "Use at least 12 characters. Four words that do not belong together are easy to remember.")]
    [InlineData("runa runa runa", "This password is easy to guess. Use words that have nothing to do with you, the shop or the sport.")]
    public async Task Password_that_will_not_do_is_refused_and_leaves_the_link_open(string typed, string sentence)
    {
        var runa = _shop.Stranger();
        var before = _shop.Database.Read(AccountRows);
        var form = await runa.Open(PrintedLink());

        var answer = await runa.Send(form, ("Input.NewPassword", typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(before, _shop.Database.Read(AccountRows));
        Assert.Equal("/shop", (await runa.Send(answer, ("Input.NewPassword", Better))).Location);
    }

    [Fact]
    public async Task Owner_shut_out_by_wrong_tries_gets_in()
    {
        var runa = _shop.Stranger();
        await runa.SignInTooOften();

        Assert.Equal("/shop", (await runa.Send(await runa.Open(PrintedLink()), ("Input.NewPassword", Better))).Location);
    }

    [Fact]
    public async Task Nobody_finds_the_token_in_the_log_or_the_records()
    {
        var link = PrintedLink();
        var runa = _shop.Stranger();
        await runa.Send(await runa.Open(link), ("Input.NewPassword", Better));

        var token = link.Split('/')[^1];
        Assert.NotEmpty(_shop.Log.All);
        Assert.DoesNotContain(_shop.Log.All, line => line.Contains(token, StringComparison.Ordinal));
        Assert.DoesNotContain(token, _shop.Database.Dump(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Shop_without_an_owner_gets_a_set_up_link()
    {
        using var fresh = new TestShop();

        var line = SetUpLinkCommand.Lines(fresh.Services, "http://localhost:5080").ElementAt(1);

        Assert.StartsWith("Set up     http://localhost:5080/account/set-up/", line, StringComparison.Ordinal);
        var page = await fresh.Stranger().Open(new Uri(line["Set up".Length..].Trim()).AbsolutePath);
        Assert.NotNull(page.Document.QuerySelector("main form"));
    }

    private static string AccountRows(Microsoft.Data.Sqlite.SqliteConnection connection) =>
        string.Join('\n', Dapper.SqlMapper.Query<string>(connection, "SELECT password_hash || security_stamp FROM account"));

    private string PrintedLink()
    {
        var line = SetUpLinkCommand.Lines(_shop.Services, "http://localhost:5080").Single(l => l.StartsWith("Password  ", StringComparison.Ordinal));
        return new Uri(line["Password".Length..].Trim()).AbsolutePath;
    }
}
