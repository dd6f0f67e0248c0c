using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace TagPage.Browser.Tests;

/// <summary>
/// One person with one browser session. Whatever goes wrong in the page (console error, failed load, a request to
/// another host) fails the test. A failing test leaves a screenshot and the page, and a trace where TRACES=1 asked for
/// one: recording them slows every test down, so tests/run.sh asks when it runs those that failed once more.
/// </summary>
public sealed class Journey : IAsyncDisposable
{
    private static readonly bool Traces = Environment.GetEnvironmentVariable("TRACES") == "1";

    private readonly IBrowserContext _session;
    private readonly ConcurrentQueue<string> _faults = new();
    private readonly string _host;

    private Journey(IBrowserContext session, IPage page, string host)
    {
        (_session, Page, _host) = (session, page, host);
        page.Console += (_, line) => Note(line.Type == "error" && !IsOwnStatus(line), $"console: {line.Text} {line.Location}");
        page.PageError += (_, error) => Note(true, "script: " + error);
        page.Request += (_, request) => Note(IsForeign(request.Url), "request to another host: " + request.Url);
    }

    public IPage Page { get; }

    /// <summary>A session at phone width, as a first visitor has it.</summary>
    public static Task<Journey> Phone(Stage stage, bool javaScript = true, ColorScheme scheme = ColorScheme.Light, string? locale = null) =>
        Open(stage, new() { Locale = locale, ViewportSize = new() { Width = 360, Height = 640 }, JavaScriptEnabled = javaScript, ColorScheme = scheme, HasTouch = true });

    /// <summary>A session at the shop's desk.</summary>
    public static Task<Journey> Desk(Stage stage, ColorScheme scheme = ColorScheme.Light) =>
        Open(stage, new() { ViewportSize = new() { Width = 1280, Height = 800 }, ColorScheme = scheme });

    /// <summary>The same in a browser with switches of its own.</summary>
    public static Task<Journey> Desk(Stage stage, IBrowser browser) =>
        Open(stage, new() { ViewportSize = new() { Width = 1280, Height = 800 } }, browser);

    public Task Go(string path) => Page.GotoAsync(path);

    public async Task SignIn()
    {
        await Go("/account/sign-in");
        await Fill("Sign-in name", Stage.OwnerName);
        await Fill("Password", Stage.OwnerPassword);
        await Press("Sign in");
    }

    public Task Press(string name) => Arrive(Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }));

    public Task Follow(string name) => Arrive(Page.GetByRole(AriaRole.Link, new() { Name = name }).First);

    /// <summary>Opens a folded part by words of its summary.</summary>
    public Task Unfold(string words) => Page.Locator("summary").Filter(new() { HasText = words }).ClickAsync();

    public Task Fill(string label, string value) => Page.GetByLabel(label, new() { Exact = true }).FillAsync(value);

    public Task Choose(string label, string option) => Page.GetByLabel(label, new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Label = option });

    public Task Reads(string text) => Assertions.Expect(Page.Locator("main")).ToContainTextAsync(text);

    /// <summary>On the narrowest phone, and with text twice as large: no wider than the screen, and no word broken in the middle.</summary>
    public async Task FitsTheScreen()
    {
        var size = Page.ViewportSize!;
        await Page.FitsAndBreaksNoWord("as it is");
        await Page.SetViewportSizeAsync(320, size.Height);
        await Page.FitsAndBreaksNoWord("at 320 pixels");
        await Page.SetViewportSizeAsync(360, size.Height);
        await Page.EvaluateAsync("() => { document.documentElement.style.fontSize = '200%' }");
        await Page.FitsAndBreaksNoWord("with text twice as large");
        await Page.EvaluateAsync("() => { document.documentElement.style.fontSize = '' }");
        await Page.SetViewportSizeAsync(size.Width, size.Height);
    }

    /// <summary>Whoever goes from heading to heading comes to the main one first.</summary>
    public async Task BeginsWithItsMainHeading() =>
        Assert.Equal("H1", await Page.EvaluateAsync<string>("document.querySelector('main :is(h1, h2, h3)').tagName"));

    /// <summary>Seen without scrolling.</summary>
    public async Task IsOnTheFirstScreen(ILocator locator)
    {
        var box = await locator.First.BoundingBoxAsync();
        Assert.NotNull(box);
        Assert.InRange(box.Y + box.Height, 1, Page.ViewportSize!.Height);
    }

    /// <summary>In light and in dark.</summary>
    public Task HasNoAxeViolation() => Page.HasNoAxeViolation();

    /// <summary>The person leaves; the session stays open until it is known how the test went.</summary>
    public ValueTask DisposeAsync()
    {
        Assert.True(_faults.IsEmpty, string.Join('\n', _faults));
        return ValueTask.CompletedTask;
    }

    /// <param name="evidence">The name under which to keep what is on the screen; null where nothing went wrong.</param>
    internal async Task End(string? evidence)
    {
        if (evidence is not null)
            await Keep(Path.Combine(Directory.CreateDirectory(Path.Combine(Published.Source(), "TestResults")).FullName, evidence));
        await _session.CloseAsync();
    }

    private static async Task<Journey> Open(Stage stage, BrowserNewContextOptions options, IBrowser? browser = null)
    {
        options.BaseURL = stage.Address;
        var session = await (browser ?? OneBrowser.Browser).NewContextAsync(options);
        session.SetDefaultTimeout(OneBrowser.Patience);
        if (Traces)
            await session.Tracing.StartAsync(new() { Screenshots = true, Snapshots = true });
        var journey = new Journey(session, await session.NewPageAsync(), new Uri(stage.Address).Host);
        EvidenceAttribute.Watch(journey);
        return journey;
    }

    /// <summary>Chromium also reports it when the page itself answers 404, as a mistyped code should.</summary>
    private bool IsOwnStatus(IConsoleMessage line) =>
        line.Text.StartsWith("Failed to load resource", StringComparison.Ordinal) && line.Location.StartsWith(Page.Url, StringComparison.Ordinal);

    /// <summary>Milliseconds after which an unreported load counts as missed.</summary>
    private const float Missed = 20_000;

    /// <summary>Clicks and waits for the page that answers, past any redirect.</summary>
    private async Task Arrive(ILocator way)
    {
        await Page.RunAndWaitForResponseAsync(() => way.ClickAsync(), r => r.Request.IsNavigationRequest && r.Status is < 300 or >= 400);
        try
        {
            await Page.WaitForLoadStateAsync(LoadState.Load, new() { Timeout = Missed });
        }
        catch (TimeoutException)
        {
            // An event that fell between the answer and this wait is not told again; whatever is read next waits by itself.
        }
    }

    private void Note(bool fault, string text)
    {
        if (fault)
            _faults.Enqueue(text);
    }

    private bool IsForeign(string url) =>
        Uri.TryCreate(url, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https" && uri!.Host != _host;

    private async Task Keep(string name)
    {
        await Page.ScreenshotAsync(new() { Path = name + ".png", FullPage = true });
        await File.WriteAllTextAsync(name + ".html", await Page.ContentAsync());
        if (Traces)
            await _session.Tracing.StopAsync(new() { Path = name + ".zip" });
    }
}
