using System.Net;
using System.Text.RegularExpressions;
using TagPage.Records.Outbox;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Events;
using TagPage.Web.Tests.Reminders;

namespace TagPage.Web.Tests.Faults;

/// <summary>After new-keys nothing opens that somebody could have taken, or made, with the old data folder.</summary>
public sealed partial class StolenMachineTests : IDisposable
{
    private readonly OwnersDesk _desk = new();

    public void Dispose() => _desk.Dispose();

    [Fact]
    public async Task New_keys_end_sessions_and_links_and_leave_labels_alone()
    {
        var shop = await _desk.Start().OwnedByRuna();
        var home = new Household(shop);
        var made = shop.Records.Reminder(home.Client, home.Racket);
        var (ownPage, reminder, stop) = (shop.OwnPageLink(home.Client), home.Link(made), home.StopLink(made));
        foreach (var path in new[] { ownPage, reminder, stop })
            Assert.NotNull((await shop.Stranger().Open(path)).Form());
        var runa = await Cookies(shop, async v => await v.SignIn());
        var odalys = await Cookies(shop, async v => await v.Send(await v.Open(ownPage)));
        Assert.Equal((true, true), (await Opens(shop, runa, "/shop/strings"), await Opens(shop, odalys, "/my")));
        _desk.Stop();
        var keys = _desk.Files().Where(f => f.StartsWith("keys", StringComparison.Ordinal)).ToList();

        var printed = await _desk.Type("TagPage.Web new-keys");
        shop = _desk.Start();

        Assert.Equal((false, false), (await Opens(shop, runa, "/shop/strings"), await Opens(shop, odalys, "/my")));
        Assert.Equal((0, 0), (shop.Records.Count("session"), shop.Records.Count("own_page_session")));
        foreach (var path in new[] { ownPage, reminder, stop })
            Assert.Null((await shop.Stranger().Open(path)).Form());
        Assert.Contains("Heron Spin", (await shop.Stranger().Open($"/t/{home.Tag}")).Main, StringComparison.Ordinal);
        await shop.Stranger().Enters(shop.OwnPageLink(home.Client));
        Assert.NotNull((await shop.Stranger().Open(new Uri(Address().Match(printed).Value).AbsolutePath)).Form());
        Assert.NotEmpty(keys);
        Assert.Empty(keys.Intersect(_desk.Files()));
    }

    [Fact]
    public async Task New_keys_sign_the_tablets_of_an_event_out()
    {
        var shop = await _desk.Start().OwnedByRuna();
        var fair = new Fairground(shop);
        var home = fair.Home;
        var tablet = await Cookies(shop, async v => await v.Send(await v.Open(fair.Link)));
        Assert.True(await Opens(shop, tablet, home));
        _desk.Stop();

        await _desk.Type("TagPage.Web new-keys");
        shop = _desk.Start();

        Assert.False(await Opens(shop, tablet, home));
        Assert.Equal(0, shop.Records.Count("event_session"));
    }

    [Fact]
    public async Task New_keys_help_where_a_key_is_damaged_and_there_is_no_copy()
    {
        await _desk.Start().OwnedByRuna();
        _ = _desk.Start().Get<LinkTokens>();
        _desk.Stop();
        await _desk.Type("truncate -s 5 data/keys/links.key");
        Assert.Equal(1, (await _desk.Ask("set-up-link")).Code);

        Assert.Equal(0, (await _desk.Ask("new-keys")).Code);

        Assert.Equal(0, (await _desk.Ask("set-up-link")).Code);
    }

    /// <summary>Whole, damaged: what becomes of it, and what the owner reads.</summary>
    [Theory]
    [InlineData(48, true, "Backups stay sealed with the passphrase they had.")]
    [InlineData(5, false, "The passphrase for backups was damaged and is gone")]
    public async Task New_keys_never_unseal_backups_without_a_word(int bytes, bool stays, string said)
    {
        await _desk.Start().OwnedByRuna();
        _desk.Stop();
        await _desk.Type($"head -c {bytes} /dev/urandom > data/keys/backups.seal");

        var (code, output, _) = await _desk.Ask("new-keys");

        Assert.Equal((0, stays), (code, File.Exists(Path.Combine(_desk.Data, "keys", "backups.seal"))));
        Assert.Contains(said, output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_keys_are_not_made_beside_a_running_shop_which_would_go_on_with_the_old_ones()
    {
        var shop = await _desk.Start().OwnedByRuna();
        var runa = await Cookies(shop, async v => await v.SignIn());

        var (code, _, errors) = await _desk.Ask("new-keys");

        Assert.Equal(1, code);
        Assert.Contains("Stop that one first", errors, StringComparison.Ordinal);
        Assert.True(await Opens(shop, runa, "/shop/strings"));
    }

    [Fact]
    public async Task New_keys_make_no_shop_where_none_was()
    {
        var (code, _, errors) = await _desk.Ask("new-keys");

        Assert.Equal(1, code);
        Assert.Contains("There is no shop", errors, StringComparison.Ordinal);
        Assert.False(File.Exists(_desk.Database));
    }

    /// <summary>What a new browser was given when it came in.</summary>
    private static async Task<string> Cookies(TestShop shop, Func<Visitor, Task<WebPage>> enter) =>
        string.Join("; ", (await enter(shop.Stranger())).Response.Headers.GetValues("Set-Cookie").Select(c => c.Split(';')[0]));

    /// <summary>Whether a browser with these cookies gets in.</summary>
    private static async Task<bool> Opens(TestShop shop, string cookies, string path)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        request.Headers.Add("Cookie", cookies);
        return (await shop.Stranger().Client.SendAsync(request, TestContext.Current.CancellationToken)).StatusCode == HttpStatusCode.OK;
    }

    [GeneratedRegex(@"https?://\S+")]
    private static partial Regex Address();
}
