using Dapper;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Faults.UnderFire;

/// <summary>
/// The real program, killed again and again while people press its buttons over HTTP and its emails meet a mail server that hangs, refuses,
/// puts off and hangs up after the email.
/// </summary>
internal sealed class Fire : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly DataFolder _folder = new(Path.Combine(Path.GetTempPath(), "tagpage-fire-" + Guid.NewGuid().ToString("N")));
    private readonly MoodyServer _server = new();
    private readonly HashSet<long> _open = [];
    private readonly HashSet<string> _putOff = [];
    private readonly Random _random;
    private readonly FiredProgram _program;
    private readonly FireCrew _crew;
    private bool _isGood;
    private long _next;
    private int _days;

    public Fire(int seed)
    {
        _random = new Random(seed);
        _program = new FiredProgram(_folder, _server.Port);
        _crew = new FireCrew(new Uri($"http://127.0.0.1:{_program.Port}"), _random);
        _server.Says = Says;
    }

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public async Task<FireToll> Fight(int kills, int reminders, Action<string> tell)
    {
        _next = reminders;
        var (owner, phone, player) = await SetUp(reminders);
        for (var n = 1; n <= kills; n++)
        {
            await _program.Start();
            await _crew.PressAgain();
            await Storm(owner, phone, player);
            if (n % 10 == 0)
                tell($"{n} kills, {_crew.Told.Count} presses acknowledged, {_server.Whole.Count} emails handed over, {_crew.Odd.Count} odd answers");
        }
        _isGood = true;
        await _program.Start();
        await _crew.PressAgain();
        await AllMailsAreGone();
        _program.Kill();
        Assert.Empty(_crew.Odd);
        return FireToll.Of(_folder, _crew, _server, _open, kills);
    }

    public async ValueTask DisposeAsync()
    {
        _program.Dispose();
        _crew.Dispose();
        await _server.DisposeAsync();
        Directory.Delete(_folder.Root, recursive: true);
    }

    /// <summary>The owner sets up the shop, reminds everybody who is due and stays signed in; a client opens the own page.</summary>
    private async Task<(Visitor Owner, Visitor Phone, long Player)> SetUp(int reminders)
    {
        var (owner, phone, player) = (_crew.Newcomer(), _crew.Newcomer(), ++_next);
        var link = (await _program.Start()).SelectMany(line => line.Split(' ')).First(word => word.Contains("/account/set-up/", StringComparison.Ordinal));
        var done = await owner.Send(await owner.Open(new Uri(link).AbsolutePath),
            ("Input.ShopName", "Ferrygate Racket Bench"), ("Input.Name", Runa.Name), ("Input.Password", Runa.Password), ("Input.Country", "GB"), ("Input.TimeZone", "Etc/UTC"), ("Input.Currency", "GBP"), ("Input.TensionUnit", "Lb"));
        Assert.Equal("/shop", done.Location);
        _program.Kill();
        FireField.Fill(_folder, reminders);
        var page = FireField.OwnPage(_folder, player);
        await _program.Start();
        await phone.Enters(page);
        Assert.StartsWith("/shop/nudges/batch/", (await owner.Send(await owner.Open("/shop/nudges/batch"))).Location, StringComparison.Ordinal);
        Kill();
        return (owner, phone, player);
    }

    /// <summary>Everybody presses until the program is killed, at a random moment after the first press of this life was answered.</summary>
    private async Task Storm(Visitor owner, Visitor phone, long player)
    {
        var before = _crew.Told.Count;
        Task[] pressing =
        [
            Task.Run(() => _crew.Finds(_crew.Newcomer(), Another), Token), Task.Run(() => _crew.Finds(_crew.Newcomer(), Another), Token),
            Task.Run(() => _crew.TakesIn(owner, Another), Token), Task.Run(() => _crew.IsPaid(owner, Another), Token),
            Task.Run(() => _crew.Plays(phone, player, () => DateOnly.FromDateTime(DateTime.UtcNow).AddDays(-Interlocked.Increment(ref _days))), Token),
        ];
        var until = DateTime.UtcNow + Patience;
        while (_crew.Told.Count == before && !pressing.Any(p => p.IsFaulted) && DateTime.UtcNow < until)
            await Task.Delay(5, Token);
        await Task.Delay(Draw(1, 900), Token);
        Kill();
        await Task.WhenAll(pressing);
    }

    /// <summary>Each racket is taken in once, or a second ticket would be asked about.</summary>
    private long Another() => Interlocked.Increment(ref _next) is var n && n <= FireField.Households ? n : throw new InvalidOperationException("More households are needed.");

    /// <summary>What was on its way is as open as what the server kept silent about. Then an hour passes for what waits to be sent again.</summary>
    private void Kill()
    {
        _program.Kill();
        using var database = FireField.Open(_folder);
        _open.UnionWith(database.Read(c => c.Query<long>("SELECT id FROM outbox WHERE state = 'Leaving'").ToList()));
        database.Write(c => c.Execute("UPDATE outbox SET not_before = '2026-01-01T00:00:00.000Z' WHERE state = 'Queued'"));
    }

    private async Task AllMailsAreGone()
    {
        using var database = FireField.Open(_folder);
        var until = DateTime.UtcNow + Patience;
        while (database.Read(c => c.ExecuteScalar<bool>(WaitingSql)))
        {
            Assert.True(DateTime.UtcNow < until, "Emails are still waiting.");
            database.Write(c => c.Execute("UPDATE outbox SET not_before = '2026-01-01T00:00:00.000Z' WHERE state = 'Queued'"));
            await Task.Delay(500, Token);
        }
    }

    private const string WaitingSql = """
        SELECT EXISTS (SELECT 1 FROM outbox WHERE state IN ('Queued', 'Leaving')) OR EXISTS (SELECT 1 FROM reminder_batch_client WHERE state = 'Waiting')
        """;

    private async Task<string?> Says(string stage, string to)
    {
        if (stage == MoodyServer.Rcpt && FireField.HasNobody(Client(to)))
            return "550 5.1.1 nobody here";
        if (_isGood)
            return null;
        return (stage, Draw(0, 100)) switch
        {
            (MoodyServer.Greeting, < 3) => "421 4.3.2 closing",
            (MoodyServer.Greeting, < 4) => await _server.Silence(),
            (MoodyServer.Rcpt, _) when IsNew(to) => "450 4.7.1 greylisted, come back later",
            (MoodyServer.Data, < 3) => MoodyServer.HangsUp,
            (MoodyServer.End, < 6) => "451 4.3.0 not now",
            (MoodyServer.End, < 16) => MoodyServer.HangsUp,
            (MoodyServer.End, < 18) => await _server.Silence(),
            _ => null,
        };
    }

    private bool IsNew(string to)
    {
        lock (_putOff)
            return _putOff.Add(to);
    }

    private static long Client(string to) => long.Parse(to.Split("client", 2)[1].Split('@')[0], System.Globalization.CultureInfo.InvariantCulture);

    private int Draw(int from, int to)
    {
        lock (_random)
            return _random.Next(from, to);
    }
}
