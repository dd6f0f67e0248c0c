using System.Diagnostics;
using System.Net;
using System.Net.ServerSentEvents;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A real server on a port of this machine with the board and twelve tablets.</summary>
public sealed class LiveDeskTests(ITestOutputHelper output) : IDisposable
{
    private const int Tablets = 12, Changes = 20;

    private readonly TestShop _shop = new() { IsNew = true, Settings = { ["TagPage:Address"] = "http://localhost:5080" } };

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Change_on_one_tablet_is_seen_on_the_board_and_on_twelve_others()
    {
        _shop.House.UseKestrel(0);
        _shop.House.StartServer();
        var fair = new Fairground(_shop);
        for (var racket = 0; racket < Changes; racket++)
            fair.TakeIn($"Player {racket}");
        var address = _shop.Get<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First().Replace("127.0.0.1", "localhost", StringComparison.Ordinal);
        using var gone = CancellationTokenSource.CreateLinkedTokenSource(Token);
        var watchers = Enumerable.Range(0, Tablets + 1).Select(at => new Watcher(address, fair.Home, at == 0 ? "/board" : "")).ToList();
        var watching = watchers.Select(watcher => watcher.Watch(gone.Token)).ToList();
        await Task.WhenAll(watchers.Select(watcher => watcher.IsLive)).WaitAsync(TimeSpan.FromSeconds(60), Token);

        var times = new List<double>();
        for (var number = 1; number <= Changes; number++)
        {
            var clock = Stopwatch.StartNew();
            var seen = watchers.Select(watcher => watcher.Next(clock)).ToList();
            Fairground.Done(_shop.Get<DeskMoveStore>().PutOnCourt(Who.Helper(fair.Id), fair.Id, number, true));
            times.AddRange(await Task.WhenAll(seen).WaitAsync(TimeSpan.FromSeconds(60), Token));
        }

        times.Sort();
        output.WriteLine($"a change seen on the board and {Tablets} tablets, page read again: median {times[times.Count / 2]:0} ms, 95 of 100 {times[times.Count * 95 / 100]:0} ms, slowest {times[^1]:0} ms");
        Assert.Equal(Changes * (Tablets + 1), times.Count);
        Assert.True(times[times.Count / 2] < 300, $"{times[times.Count / 2]} ms");
        await gone.CancelAsync();
        await Task.WhenAll(watching);
    }

    [Fact]
    public async Task Nobody_listens_any_more_once_the_tablets_are_gone_and_the_program_ends_at_once()
    {
        _shop.House.UseKestrel(0);
        _shop.House.StartServer();
        var fair = new Fairground(_shop);
        var address = _shop.Get<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First().Replace("127.0.0.1", "localhost", StringComparison.Ordinal);
        var watcher = new Watcher(address, fair.Home, "");
        var watching = watcher.Watch(Token);
        await watcher.IsLive.WaitAsync(TimeSpan.FromSeconds(60), Token);
        var desks = _shop.Get<LiveDesks>();
        Assert.Equal(1, desks.Listening);

        var clock = Stopwatch.StartNew();
        _shop.Dispose();

        await watching.WaitAsync(TimeSpan.FromSeconds(60), Token);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(20), $"{clock.Elapsed}");
        Assert.Equal(0, desks.Listening);
    }

    /// <summary>What desk.js does: listens, and reads the page again whenever the mark is another.</summary>
    private sealed class Watcher(string address, string home, string page)
    {
        private readonly TaskCompletionSource _live = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private TaskCompletionSource<double>? _next;
        private Stopwatch? _clock;

        public Task IsLive => _live.Task;

        public Task<double> Next(Stopwatch clock)
        {
            _clock = clock;
            return (_next = new TaskCompletionSource<double>(TaskCreationOptions.RunContinuationsAsynchronously)).Task;
        }

        public async Task Watch(CancellationToken gone)
        {
            using var client = new HttpClient { BaseAddress = new Uri(address), Timeout = Timeout.InfiniteTimeSpan };
            client.DefaultRequestHeaders.Add(TestSignIn.Header, "Owner");
            client.DefaultRequestHeaders.Add(TestSource.Header, "127.0.0.1");
            try
            {
                await using var line = await client.GetStreamAsync(new Uri(home + "/live", UriKind.Relative), gone);
                var mark = "";
                await foreach (var heard in SseParser.Create(line).EnumerateAsync(gone))
                {
                    if (heard.EventType != "desk" || heard.Data == mark)
                        continue;
                    mark = heard.Data;
                    var answer = await client.GetAsync(new Uri(home + page, UriKind.Relative), gone);
                    Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
                    Assert.Contains($"data-mark=\"{mark}\"", await answer.Content.ReadAsStringAsync(gone), StringComparison.Ordinal);
                    _live.TrySetResult();
                    _next?.TrySetResult(_clock!.Elapsed.TotalMilliseconds);
                }
            }
            catch (Exception e) when (_live.Task.IsCompleted && e is (OperationCanceledException or HttpRequestException or IOException))
            {
                // The line was cut, by the test or by the end of the program.
            }
            catch (Exception e)
            {
                _live.TrySetException(e);
                _next?.TrySetException(e);
                throw;
            }
        }
    }
}
