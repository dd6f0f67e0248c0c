using System.Net;
using Dapper;
using TagPage.Records.Accounts;
using TagPage.Records.Shop;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

public sealed class SetUpTests : IDisposable
{
    private readonly TestShop _shop = new();

    private static readonly (string, string)[] Filled =
    [
        ("Input.ShopName", "Bench by the Mill"), ("Input.Name", "Runa"), ("Input.Password", Runa.Password), ("Input.Country", "CH"),
        ("Input.TimeZone", "Europe/Zurich"), ("Input.Currency", "CHF"), ("Input.TensionUnit", "Kg"),
    ];

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Fresh_install_has_no_account_and_prints_a_link_that_sets_the_shop_up()
    {
        Assert.False(_shop.Get<AccountStore>().Any());
        var link = PrintedLink();
        Assert.StartsWith("https://tag.example/account/set-up/", link.ToString(), StringComparison.Ordinal);
        var runa = _shop.Stranger();

        var answer = await runa.Send(await runa.Open(link.AbsolutePath), Filled);

        Assert.Equal("/shop", answer.Location);
        var shop = _shop.Get<ShopStore>().Get();
        Assert.Equal(("Bench by the Mill", "CH", "Europe/Zurich", "CHF", Core.Units.TensionUnit.Kg), (shop.Name, shop.Country, shop.TimeZone, shop.Currency, shop.TensionUnit));
        Assert.Contains("First add a string", (await runa.Open("/shop/strings")).Main, StringComparison.Ordinal);
        Assert.Equal("/shop", (await _shop.Stranger().SignIn()).Location);
    }

    [Fact]
    public async Task Link_works_once()
    {
        var link = PrintedLink().AbsolutePath;
        var (runa, second) = (_shop.Stranger(), _shop.Stranger());
        var form = await second.Open(link);
        await runa.Send(await runa.Open(link), Filled);
        var before = _shop.Database.Dump();

        var late = await second.Send(form, [.. Filled, ("Input.Name", "Mallory")]);

        Assert.Contains("no longer works", late.Main, StringComparison.Ordinal);
        Assert.Contains("no longer works", (await second.Open(link)).Main, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
        Assert.Null(_shop.Get<SetUpStore>().NewToken());
    }

    [Fact]
    public async Task Link_dies_after_30_minutes()
    {
        var runa = _shop.Stranger();
        var form = await runa.Open(PrintedLink().AbsolutePath);

        _shop.Clock.Advance(TimeSpan.FromMinutes(30));
        var late = await runa.Send(form, Filled);

        Assert.Contains("no longer works", late.Main, StringComparison.Ordinal);
        Assert.False(_shop.Get<AccountStore>().Any());
    }

    [Fact]
    public async Task New_start_makes_a_new_link_and_the_old_one_dies()
    {
        var old = PrintedLink().AbsolutePath;
        var token = _shop.Get<SetUpStore>().NewToken();

        Assert.Contains("no longer works", (await _shop.Stranger().Open(old)).Main, StringComparison.Ordinal);
        Assert.NotNull((await _shop.Stranger().Open("/account/set-up/" + token)).Document.QuerySelector("main form"));
    }

    [Fact]
    public async Task Looking_at_the_link_fifty_times_changes_nothing_and_signs_nobody_in()
    {
        var link = PrintedLink().AbsolutePath;
        var scanner = _shop.Stranger();
        var before = _shop.Database.Dump();

        for (var n = 0; n < 50; n++)
        {
            using var head = new HttpRequestMessage(HttpMethod.Head, new Uri(link, UriKind.Relative));
            var answers = new[] { await scanner.Get(link), await scanner.Client.SendAsync(head, TestContext.Current.CancellationToken) };
            Assert.All(answers, a => Assert.Equal(HttpStatusCode.OK, a.StatusCode));
            Assert.All(answers.SelectMany(a => a.Headers.TryGetValues("Set-Cookie", out var set) ? set : []), c =>
                Assert.StartsWith("__Host-form=", c, StringComparison.Ordinal));
        }

        Assert.Equal(before, _shop.Database.Dump());
        Assert.False(await scanner.IsSignedIn());
    }

    [Fact]
    public async Task Wrong_token_opens_nothing()
    {
        var link = PrintedLink().AbsolutePath;

        Assert.Contains("no longer works", (await _shop.Stranger().Open(link[..^1])).Main, StringComparison.Ordinal);
    }

    [Fact]
    public void Tokens_hold_192_random_bits_and_only_their_hash_is_kept()
    {
        var store = _shop.Get<SetUpStore>();
        var tokens = Enumerable.Range(0, 100).Select(_ => store.NewToken()!).ToHashSet();

        Assert.Equal(100, tokens.Count);
        Assert.All(tokens, t => Assert.Equal(24, System.Buffers.Text.Base64Url.DecodeFromChars(t).Length));
        var kept = Assert.Single(_shop.Database.Read(c => c.Query<string>("SELECT token_hash FROM setup_link").ToList()));
        Assert.Matches("^[0-9a-f]{64}$", kept);
        Assert.DoesNotContain(tokens, t => _shop.Database.Dump().Contains(t, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Input.ShopName", "", "Enter the shop’s name as your clients know it.")]
    [InlineData("Input.Password", "short", "Use at least 12 characters. Four words that do not belong together are easy to remember.")]
    [InlineData("Input.Password", "bench by the mill 1", "This password is easy to guess. Use words that have nothing to do with you, the shop or the sport.")]
    [InlineData("Input.TimeZone", "Europe/Atlantis", "Choose a time zone from the list.")]
    [InlineData("Input.Country", "ZZ", "Choose a country from the list.")]
    [InlineData("Input.Currency", "QQQ", "Choose a currency from the list.")]
    public async Task Nonsense_is_refused_at_its_field_and_leaves_the_link_open(string field, string typed, string sentence)
    {
        var link = PrintedLink().AbsolutePath;
        var runa = _shop.Stranger();

        var answer = await runa.Send(await runa.Open(link), [.. Filled, (field, typed)]);

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.False(_shop.Get<AccountStore>().Any());
        Assert.Equal("/shop", (await runa.Send(answer, Filled)).Location);
    }

    [Fact]
    public async Task Nobody_finds_token_or_password_in_the_log()
    {
        var link = PrintedLink().AbsolutePath;
        var runa = _shop.Stranger();
        await runa.Send(await runa.Open(link), Filled);
        await _shop.Stranger().SignIn(password: "forged\r\nSigned in: owner");

        Assert.NotEmpty(_shop.Log.All);
        Assert.All(_shop.Log.All, line =>
        {
            Assert.DoesNotContain(link.Split('/')[^1], line, StringComparison.Ordinal);
            Assert.DoesNotContain(Runa.Password, line, StringComparison.Ordinal);
            Assert.DoesNotContain("forged", line, StringComparison.Ordinal);
        });
    }

    private Uri PrintedLink()
    {
        _ = _shop.Services;
        var line = Assert.Single(_shop.Output.ToString().Split('\n'), l => l.StartsWith("Set up ", StringComparison.Ordinal));
        return new Uri(line["Set up ".Length..].Trim());
    }
}
