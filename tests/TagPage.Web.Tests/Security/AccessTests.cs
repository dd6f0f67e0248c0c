using System.Net;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>Tries every endpoint of the program, as a stranger, as a client, as a helper at the bench and as the owner.</summary>
public sealed class AccessTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly TagCode _tag;
    private readonly long _odalys;

    public AccessTests() => (_odalys, _, _, _tag, _) = _shop.Records.Family();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Every_door_is_listed_and_every_listed_door_is_there()
    {
        var (built, listed) = (await Door.Built(_shop), Door.Listed.Select(d => d.Route).ToList());

        var unlisted = built.Except(listed).ToList();
        var missing = listed.Except(built).ToList();
        Assert.True(unlisted.Count == 0, "Not in doors.txt:\n" + string.Join('\n', unlisted));
        Assert.True(missing.Count == 0, "In doors.txt, but not in the program:\n" + string.Join('\n', missing));
    }

    [Fact]
    public async Task Nobody_gets_past_the_owners_doors_and_nothing_changes() =>
        await IsTurnedAway(_shop.Stranger(), d => d.ForShop, "/account/sign-in");

    [Fact]
    public async Task Nobody_gets_past_the_clients_doors_and_nothing_changes() =>
        await IsTurnedAway(_shop.Stranger(), d => d.ForClients, "/my/link");

    [Fact]
    public async Task Client_gets_past_none_of_the_owners_doors_and_nothing_changes() =>
        await IsTurnedAway(await _shop.OnOwnPage(_odalys), d => d.ForShop, "/account/sign-in");

    [Fact]
    public async Task Owner_gets_past_none_of_the_clients_doors_and_nothing_changes() =>
        await IsTurnedAway(_shop.Owner(), d => d.ForClients, "/my/link");

    [Fact]
    public async Task Helper_gets_past_none_of_the_clients_doors_and_nothing_changes() =>
        await IsTurnedAway(_shop.Helper(), d => d.ForClients, "/my/link");

    [Fact]
    public async Task Helper_is_refused_whatever_is_the_owners_alone_and_nothing_changes()
    {
        var (helper, before, tried) = (_shop.Helper(), _shop.Database.Dump(), 0);

        foreach (var address in Door.Listed.Where(d => d.ForShop && !d.ForBench).Select(Address))
            foreach (var method in Methods)
            {
                var answer = await Ask(helper, method, address);
                Assert.True(answer.StatusCode == HttpStatusCode.Forbidden, $"{method} {address}: {answer.StatusCode}");
                tried++;
            }

        Assert.True(tried > 300, $"{tried} were tried.");
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Helper_gets_through_every_door_of_the_bench()
    {
        var helper = _shop.Helper();

        foreach (var address in Door.Listed.Where(d => d.ForBench || d.ForEverybody).Select(Address))
        {
            var answer = await helper.Get(address);
            Assert.True((int)answer.StatusCode < 500 && answer.StatusCode != HttpStatusCode.Forbidden, $"{address}: {answer.StatusCode}");
            Assert.False(answer.Headers.Location?.ToString().StartsWith("/account/sign-in", StringComparison.Ordinal) == true, address);
        }
    }

    private static readonly HttpMethod[] Methods = [HttpMethod.Get, HttpMethod.Head, HttpMethod.Post, HttpMethod.Put, HttpMethod.Delete];

    private async Task IsTurnedAway(Visitor visitor, Func<Door, bool> which, string where)
    {
        var before = _shop.Database.Dump();

        foreach (var address in Door.Listed.Where(which).Select(Address))
            foreach (var method in Methods)
            {
                var answer = await Ask(visitor, method, address);
                Assert.True(answer.StatusCode == HttpStatusCode.Found, $"{method} {address}: {answer.StatusCode}");
                Assert.StartsWith(where, answer.Headers.Location?.ToString(), StringComparison.Ordinal);
                Assert.Empty(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
            }

        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Client_gets_through_every_door_of_the_corner()
    {
        var odalys = await _shop.OnOwnPage(_odalys);

        foreach (var address in Door.Listed.Where(d => d.ForClients || d.ForEverybody).Select(Address))
        {
            var answer = await odalys.Get(address);
            Assert.True((int)answer.StatusCode < 500, $"{address}: {answer.StatusCode}");
            Assert.False(answer.Headers.Location?.ToString().StartsWith("/my/link", StringComparison.Ordinal) == true, address);
        }
    }

    [Fact]
    public async Task Doors_for_everybody_ask_nobody_to_sign_in()
    {
        var nobody = _shop.Stranger();

        foreach (var address in Door.Listed.Where(d => d.ForEverybody).Select(Address))
        {
            var answer = await nobody.Get(address);
            Assert.True(answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.NotFound or HttpStatusCode.Found, $"{address}: {answer.StatusCode}");
            Assert.DoesNotContain("sign-in", answer.Headers.Location?.ToString() ?? "", StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Owner_gets_through_every_door()
    {
        var owner = _shop.Owner();

        foreach (var address in Door.Listed.Where(d => !d.ForClients).Select(Address))
        {
            var answer = await owner.Get(address);
            Assert.True((int)answer.StatusCode < 500, $"{address}: {answer.StatusCode}");
            Assert.False(answer.Headers.Location?.ToString().StartsWith("/account/sign-in", StringComparison.Ordinal) == true, address);
        }
    }

    [Fact]
    public async Task Looking_changes_nothing_whoever_looks()
    {
        var odalys = await _shop.OnOwnPage(_odalys);
        var before = _shop.Database.Dump();

        foreach (var visitor in new[] { _shop.Stranger(), _shop.Owner(), _shop.Helper(), odalys })
            foreach (var address in Door.Listed.Select(Address))
            {
                await visitor.Get(address);
                await Ask(visitor, HttpMethod.Head, address);
            }

        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task No_form_is_taken_without_its_token()
    {
        var odalys = await _shop.OnOwnPage(_odalys);
        var before = _shop.Database.Dump();

        foreach (var visitor in new[] { _shop.Owner(), _shop.Helper(), _shop.Stranger(), odalys })
            foreach (var door in Door.Listed.Where(d => !d.Route.Contains('*', StringComparison.Ordinal)))
            {
                var answer = await Ask(visitor, HttpMethod.Post, Address(door));
                Assert.True((int)answer.StatusCode is 302 or 400 or 403 or 404 or 405, $"{door.Route}: {answer.StatusCode}");
            }

        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Form_without_its_token_is_answered_with_what_to_do()
    {
        var answer = await Ask(_shop.Owner(), HttpMethod.Post, "/shop/strings/new");

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("reload the page", (await WebPage.Of(answer, "")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verb_a_page_has_no_use_for_is_answered_405()
    {
        var owner = _shop.Owner();
        var token = (await owner.Open("/shop/strings/new")).Document.QuerySelector("[name=__RequestVerificationToken]")!.GetAttribute("value")!;
        using var request = new HttpRequestMessage(HttpMethod.Delete, "/shop/strings/new");
        request.Headers.Add("RequestVerificationToken", token);

        var answer = await owner.Client.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
        Assert.Contains("POST", answer.Content.Headers.Allow);
    }

    private string Address(Door door) => door.Address(_tag.ToString());

    private static async Task<HttpResponseMessage> Ask(Visitor visitor, HttpMethod method, string address)
    {
        using var request = new HttpRequestMessage(method, new Uri(address, UriKind.Relative));
        if (method != HttpMethod.Get && method != HttpMethod.Head)
            request.Content = new FormUrlEncodedContent([new("Input.Name", "Mallory")]);
        return await visitor.Client.SendAsync(request, TestContext.Current.CancellationToken);
    }
}
