using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.RegularExpressions;
using TagPage.Records.Events;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Start.CommandLine;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A real process at the desk, killed while tablets press, and started again.</summary>
public sealed partial class KilledDeskTests : IDisposable
{
    private const int Tablets = 4, Presses = 3;

    private readonly DataFolder _folder = new(Path.Combine(Path.GetTempPath(), "tagpage-test-" + Guid.NewGuid().ToString("N")));
    private readonly List<Process> _started = [];

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        foreach (var process in _started)
        {
            if (!process.HasExited)
                process.Kill();
            process.WaitForExit();
            process.Dispose();
        }
        Directory.Delete(_folder.Root, recursive: true);
    }

    [Fact]
    public async Task Nothing_that_a_tablet_was_told_is_lost_and_the_day_goes_on()
    {
        var (secret, kind) = SetUp();
        var address = await Start();
        var (told, enough) = (new ConcurrentBag<int>(), new TaskCompletionSource());

        var pressing = Enumerable.Range(0, Tablets).Select(tablet => Task.Run(() => TakeIn(address, secret, kind, $"Tablet {tablet}", told, times: 200, enough), Token)).ToList();
        await enough.Task.WaitAsync(TimeSpan.FromSeconds(60), Token);
        _started[^1].Kill();
        await Task.WhenAll(pressing);

        var numbers = Board(board => board.Entries.Select(entry => entry.Number).ToList());
        Assert.True(told.Count >= Tablets * Presses);
        Assert.Empty(told.Except(numbers));
        Assert.Equal(numbers.Distinct().Count(), numbers.Count);

        address = await Start();
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

    private (string Secret, long Kind) SetUp()
    {
        Template.CopyTo(Directory.CreateDirectory(_folder.Root).FullName);
        using var database = new Database(_folder);
        new Records.Search.NameKeeper(database).Attach();
        var records = new OnFile(database);
        records.Shop();
        var clock = Clock(database);
        Fairground.Done(new EventStore(database, new ShopStore(database), TimeProvider.System).Add(Who.Shop, new EventEntry { FormKey = FormKey.New(), Name = "Harbour Open", FromOn = clock.Today, ToOn = clock.Today.AddDays(20) }));
        Fairground.Done(new TechnicianStore(database, clock).Add(Who.Shop, 1, new TechnicianEntry { FormKey = FormKey.New(), Name = "Runa", Hours = "0-24" }));
        var sessions = new EventSessionStore(database, new LinkTokens(_folder), clock);
        return (sessions.Begin(new EventStore(database, new ShopStore(database), TimeProvider.System).Get(Who.Shop, 1)!)!, records.Kind());
    }

    private T Board<T>(Func<DeskBoard, T> look)
    {
        using var database = new Database(_folder);
        return look(new DeskStore(database, Clock(database)).Get(Who.Shop, 1)!);
    }

    private static ShopClock Clock(Database database) => new(TimeProvider.System, new ShopStore(database));

    private async Task<string> Start()
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in (string[])["exec", typeof(CommandLine).Assembly.Location, $"--TagPage:DataFolder={_folder.Root}", "--urls=http://127.0.0.1:0"])
            start.ArgumentList.Add(argument);
        var process = Process.Start(start)!;
        _started.Add(process);
        while (await process.StandardOutput.ReadLineAsync(Token).AsTask().WaitAsync(TimeSpan.FromSeconds(60), Token) is { } line)
        {
            if (Address().Match(line) is { Success: true } found)
                return found.Value;
        }
        throw new InvalidOperationException("It ended: " + await process.StandardError.ReadToEndAsync(Token));
    }

    [GeneratedRegex(@"http://[\w.]+:\d+")]
    private static partial Regex Address();

    [GeneratedRegex(@"Number (\d+): promised")]
    private static partial Regex Number();
}
