using System.Net;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>A flood of sign-ins waits in a queue, and whoever cannot be served is told so. Some of these tests leave somebody waiting.</summary>
public sealed class PasswordGateTests : IAsyncLifetime
{
    private readonly TestShop _shop = new() { IsNew = true };

    public async ValueTask InitializeAsync() => await _shop.OwnedByRuna();

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    private PasswordGate Gate => _shop.Get<PasswordGate>();

    [Fact]
    public async Task Turns_come_one_after_the_other()
    {
        var first = await Enter();
        var second = Enter();
        Assert.False(second.IsCompleted);

        first!.Dispose();

        using var turn = await second;
        Assert.NotNull(turn);
        Assert.False(Enter().IsCompleted);
    }

    [Fact]
    public async Task Known_browser_does_not_wait_behind_strangers()
    {
        using var stranger = await Enter();

        using var known = await Gate.Enter(isKnown: true, CancellationToken.None);

        Assert.NotNull(known);
    }

    [Fact]
    public async Task Who_comes_when_the_line_is_full_or_waited_in_vain_gets_no_turn_and_leaves_no_gap()
    {
        var first = await Enter();
        var waiting = Enumerable.Range(0, PasswordGate.MostWaiting).Select(_ => Enter()).ToList();
        Assert.Null(await Enter());

        _shop.Clock.Advance(PasswordGate.Patience);

        Assert.All(await Task.WhenAll(waiting), Assert.Null);
        first!.Dispose();
        using var next = await Enter();
        Assert.NotNull(next);
    }

    [Fact]
    public async Task Visitor_who_left_no_longer_waits()
    {
        using var first = await Enter();
        using var gone = new CancellationTokenSource();
        var waiting = Gate.Enter(isKnown: false, gone.Token);

        await gone.CancelAsync();

        Assert.Null(await waiting);
    }

    [Fact]
    public async Task Sign_in_that_cannot_be_served_is_told_so_and_uses_up_no_try()
    {
        var stranger = _shop.Stranger();
        using (await Enter())
        {
            var line = Enumerable.Range(0, PasswordGate.MostWaiting).Select(_ => Enter()).ToList();
            for (var n = 0; n < 12; n++)
            {
                var answer = await stranger.SignIn();
                Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.Status);
                Assert.Contains("Wait a few seconds", answer.Main, StringComparison.Ordinal);
                Assert.Equal("Runa", answer.Document.QuerySelector("#Input_Name")!.GetAttribute("value"));
                Assert.DoesNotContain(Runa.Password, answer.Text, StringComparison.Ordinal);
                Assert.NotNull(answer.Response.Headers.RetryAfter);
            }
            Assert.Equal(12, _shop.Log.All.Count(l => l.Contains("Sign-in put off", StringComparison.Ordinal)));
            _shop.Clock.Advance(PasswordGate.Patience);
            await Task.WhenAll(line);
        }

        Assert.Equal("/shop", (await stranger.SignIn()).Location);
    }

    [Fact]
    public async Task Flood_of_strangers_keeps_neither_a_known_browser_nor_the_pages_waiting()
    {
        var runa = _shop.Stranger();
        await runa.SignIn();
        await runa.Send(await runa.Open("/account/sign-out"));
        using var stranger = await Enter();

        Assert.Equal("/shop", (await runa.SignIn()).Location);
        Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger().Get("/")).StatusCode);
    }

    private Task<IDisposable?> Enter() => Gate.Enter(isKnown: false, CancellationToken.None);
}
