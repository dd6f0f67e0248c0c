using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A real process at the desk, killed while tablets press, and started again.</summary>
public sealed partial class KilledDeskTests : IDisposable
{
    private const int Tablets = 4, Presses = 3;

    private readonly EventLaptop _laptop = new();

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public void Dispose() => _laptop.Dispose();

    [Fact]
    public async Task Nothing_that_a_tablet_was_told_is_lost_and_the_day_goes_on()
    {
        var (secret, kind) = (_laptop.Secret, _laptop.Kind);
        var address = await _laptop.Start();
        var (told, enough) = (new ConcurrentBag<int>(), new TaskCompletionSource());

        var pressing = Enumerable.Range(0, Tablets).Select(tablet => Task.Run(() => TakeIn(address, secret, kind, $"Tablet {tablet}", told, times: 200, enough), Token)).ToList();
        await enough.Task.WaitAsync(TimeSpan.FromSeconds(60), Token);
        _laptop.Kill();
        await Task.WhenAll(pressing);

        var numbers = Board(board => board.Entries.Select(entry => entry.Number).ToList());
        Assert.True(told.Count >= Tablets * Presses);
        Assert.Empty(told.Except(numbers));
        Assert.Equal(numbers.Distinct().Count(), numbers.Count);

        address = await _laptop.Start();
        var again = new ConcurrentBag<int>();
        await TakeIn(address, secret, kind, "After", again, times: 1);
        Assert.Equal(numbers.Max() + 1, Assert.Single(again));
    }

    private static async Task TakeIn(string address, string secret, long kind, string name, ConcurrentBag<int> told, int times, TaskCompletionSource? enough = null)
    {
        using var handler = new HttpClientHandler { AllowAutoRedirect = false };
        using var client = new HttpClient(handler) { BaseAddress = new Uri(address) };
        handler.CookieContainer.Add(client.BaseAddress, new System.Net.Cookie("desk", secret));
        var tablet = new Visitor(client);
        try
        {
            for (var at = 0; at < times; at++)
            {
                var done = await tablet.Send(await tablet.Open("/desk/1/in/visitor"), ("Input.Visitor.Name", $"{name} {at}"), ("Input.MainsTension", "52"), ("Input.MainsId", $"{kind}"));
                Assert.Equal("/desk/1/in", done.Location);
                var said = await tablet.Open(done.Location!);
                told.Add(int.Parse(Number().Match(said.Main).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture));
                if (told.Count >= Tablets * Presses)
                    enough?.TrySetResult();
            }
        }
        catch (HttpRequestException) when (times > 1)
        {
            // The program was killed.
        }
    }

    private T Board<T>(Func<DeskBoard, T> look)
    {
        using var database = new Database(_laptop.Folder);
        return look(new DeskStore(database, EventLaptop.Clock(database)).Get(Who.Shop, 1)!);
    }

    [GeneratedRegex(@"Number (\d+): promised")]
    private static partial Regex Number();
}
