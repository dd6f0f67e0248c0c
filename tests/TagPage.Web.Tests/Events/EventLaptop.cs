using System.Diagnostics;
using System.Text.RegularExpressions;
using TagPage.Records.Events;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Start.CommandLine;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A folder with the Harbour Open, at which Runa strings day and night, and the program on it as a process of its own.</summary>
internal sealed partial class EventLaptop : IDisposable
{
    private readonly List<Process> _started = [];

    public EventLaptop()
    {
        Template.CopyTo(Directory.CreateDirectory(Folder.Root).FullName);
        using var database = new Database(Folder);
        new Records.Search.NameKeeper(database).Attach();
        var records = new OnFile(database);
        records.Shop();
        var (clock, events) = (Clock(database), new EventStore(database, new ShopStore(database), TimeProvider.System));
        Fairground.Done(events.Add(Who.Shop, new EventEntry { FormKey = FormKey.New(), Name = "Harbour Open", FromOn = clock.Today, ToOn = clock.Today.AddDays(20) }));
        Fairground.Done(new TechnicianStore(database, clock).Add(Who.Shop, 1, new TechnicianEntry { FormKey = FormKey.New(), Name = "Runa", Hours = "0-24" }));
        var sessions = new EventSessionStore(database, new LinkTokens(Folder), clock);
        var desk = events.Get(Who.Shop, 1)!;
        (Secret, Link, Kind) = (sessions.Begin(desk)!, $"/desk/enter/{sessions.Token(desk)}", records.Kind());
    }

    public DataFolder Folder { get; } = new(Path.Combine(Path.GetTempPath(), "tagpage-test-" + Guid.NewGuid().ToString("N")));

    /// <summary>What the cookie of a tablet carries that has joined.</summary>
    public string Secret { get; }

    /// <summary>What the square says, without the address.</summary>
    public string Link { get; }

    public long Kind { get; }

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public static ShopClock Clock(Database database) => new(TimeProvider.System, new ShopStore(database));

    /// <summary>Where it listens.</summary>
    public async Task<string> Start(string urls = "http://127.0.0.1:0", params string[] settings)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in (string[])["exec", typeof(CommandLine).Assembly.Location, $"--TagPage:DataFolder={Folder.Root}", $"--urls={urls}", .. settings])
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

    public void Kill() => _started[^1].Kill();

    public void Dispose()
    {
        foreach (var process in _started)
        {
            if (!process.HasExited)
                process.Kill();
            process.WaitForExit();
            process.Dispose();
        }
        Directory.Delete(Folder.Root, recursive: true);
    }

    [GeneratedRegex(@"https?://[\w.]+:\d+")]
    private static partial Regex Address();
}
