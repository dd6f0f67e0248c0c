using Dapper;
using TagPage.Core.Forecast;
using TagPage.Records.DueDates;
using TagPage.Records.Players;
using TagPage.Records.PlayTime;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>
/// Whatever shop and household write through the stores of hours, pauses, readings and habits, in whatever order, refused or
/// not: the date kept at each racket is the one worked out from everything on file.
/// </summary>
public sealed class KeptDateTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long[] _rackets, _players, _strung;

    public KeptDateTests()
    {
        new DueDateKeeper(_street.Database, _street.Time).Attach();
        _street.Records.Reading(_street.Strung, 62);
        var second = _street.Records.Racket(_street.Pim, number: 2);
        var bo = _street.Records.Player(_street.Ewan, "Bo Lockyer", timesAWeek: 4);
        var bos = _street.Records.Racket(bo);
        (_players, _rackets) = ([_street.Pim, bo], [_street.Racket, second, bos]);
        _strung = [_street.Strung, _street.Records.Job(second, new(2026, 10, 20)), _street.Records.Job(bos, new(2026, 9, 14))];
    }

    public void Dispose() => _street.Dispose();

    private HoursStore Hours => new(_street.Database, _street.Clock);

    private PauseStore Pauses => new(_street.Database, _street.Clock);

    private ReadingStore Readings => new(_street.Database, _street.Clock);

    private PlayerStore Players => new(_street.Database, _street.Time);

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(14)]
    public void Kept_date_is_what_everything_on_file_gives_after_any_sequence_of_writes(int seed)
    {
        var random = new Random(seed);
        var (done, dates) = (0, new HashSet<string>());
        for (var step = 0; step < 60; step++)
        {
            var (name, write) = Writes[random.Next(Writes.Length)];
            done += write(this, random) is Outcome.Done ? 1 : 0;
            AssertKept($"step {step}, {name}, seed {seed}");
            dates.Add(_street.Records.Text("SELECT group_concat(due_on) FROM racket"));
        }
        Assert.True(done > 20, $"Only {done} writes were taken.");
        Assert.True(dates.Count > 5, $"The dates moved {dates.Count} times.");
    }

    private void AssertKept(string after)
    {
        var values = new ShopStore(_street.Database).Get().StartingValues;
        var rows = _street.Database.Read(c => Histories.Into(c, c.Query<Kept>($"SELECT {ForecastRow.Columns}, r.due_on, r.due_because FROM racket r JOIN forecast f ON f.racket_id = r.id")));
        Assert.Equal(_rackets.Length, rows.Count);
        foreach (var (row, by) in rows.Select(row => (row, row.Work(_street.Clock.Today, values))))
            Assert.True((row.DueOn, row.DueBecause) == (by.Due, by.DecidedBy), $"Racket {row.RacketId} after {after}: kept {row.DueOn} {row.DueBecause}, worked out {by.Due} {by.DecidedBy}");
    }

    private sealed record Kept : ForecastRow
    {
        public DateOnly? DueOn { get; init; }
        public LimitKind? DueBecause { get; init; }
    }

    private static readonly (string Name, Func<KeptDateTests, Random, Outcome> Write)[] Writes =
    [
        ("hours", (t, r) => t.Hours.Add(t.Somebody(r), One(r, t._rackets), new HoursEntry { FormKey = FormKey.New(), PlayedOn = Day(r), Hours = r.Next(0, 9) / 2m })),
        ("hours of a camp", (t, r) => t.Hours.Add(t.Somebody(r), One(r, t._rackets), Camp(Day(r), r.Next(1, 8)))),
        ("a note taken back", (t, r) => t.Hours.Remove(t.Somebody(r), t.Newest("logged_hours"))),
        ("a pause begins", (t, r) => t.Pauses.Begin(t.Somebody(r), One(r, t._players))),
        ("a pause ends", (t, r) => t.Pauses.End(t.Somebody(r), One(r, t._players))),
        ("a pause", (t, r) => t.Pauses.Add(Who.Shop, One(r, t._players), Pause(r))),
        ("another pause", (t, r) => t.Pauses.Change(Who.Shop, t.Newest("pause"), Pause(r))),
        ("no pause", (t, _) => t.Pauses.Remove(Who.Shop, t.Newest("pause"))),
        ("a reading", (t, r) => t.Readings.Add(Who.Shop, One(r, t._strung), new ReadingEntry { FormKey = FormKey.New(), TakenOn = Day(r), Value = r.Next(30, 62), InstrumentId = 1 })),
        ("a pitch", (t, r) => t.Readings.Add(t.Somebody(r), One(r, t._strung), new ReadingEntry { FormKey = FormKey.New(), Value = r.Next(400, 700), InstrumentId = 1 })),
        ("a reading counts after all", (t, _) => t.Readings.Count(Who.Shop, t.Newest("reading"))),
        ("a reading taken away", (t, _) => t.Readings.Remove(Who.Shop, t.Newest("reading"))),
        ("habits", (t, r) => t.Habits(One(r, t._players), r)),
        ("a night", (t, _) => t.Night()),
    ];

    private static DateOnly Day(Random random) => Street.Today.AddDays(-random.Next(30));

    private static HoursEntry Camp(DateOnly from, int days) => new() { FormKey = FormKey.New(), PlayedOn = from, LastDay = from.AddDays(days), Hours = days };

    private static PauseEntry Pause(Random random)
    {
        var from = Day(random);
        return new() { FormKey = FormKey.New(), FromOn = from, ToOn = random.Next(3) == 0 ? null : from.AddDays(random.Next(-1, 40)) };
    }

    private Outcome Habits(long player, Random random)
    {
        var row = Players.Get(player)!;
        return Players.Change(Who.Shop, player, new PlayerEntry
        {
            Version = row.Version,
            Name = row.Name,
            TimesAWeek = random.Next(1, 8),
            HoursATime = random.Next(1, 5) / 2m,
            Rule = random.Next(2) == 0 ? null : RestringRule.Hours,
        });
    }

    /// <summary>The day's own work, as the background does it.</summary>
    private Outcome.Done Night()
    {
        _street.Time.Advance(TimeSpan.FromDays(1));
        var keeper = new DueDateKeeper(_street.Database, _street.Time);
        keeper.BeginDay();
        while (keeper.RefreshLater())
        {
            // All of it.
        }
        return new Outcome.Done(0);
    }

    private Who Somebody(Random random) => _street.Be((Actor)random.Next(3));

    private static long One(Random random, long[] of) => of[random.Next(of.Length)];

    private long Newest(string table) => long.TryParse(_street.Records.Text($"SELECT MAX(id) FROM {table}"), out var id) ? id : 0;
}
