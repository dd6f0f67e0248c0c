using Dapper;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Core.Forecast;
using TagPage.Core.Jobs;
using TagPage.Records.DueDates;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>The date kept at a racket is the one that a fresh computation gives, whatever went before, on a real file.</summary>
public sealed partial class DueDateKeeperTests : IDisposable
{
    private const int Players = 3, RacketsEach = 3;

    private readonly Street _street = new(empty: true);
    private readonly DueDateKeeper _keeper;
    private readonly DueDateWorker _worker;

    public DueDateKeeperTests()
    {
        _keeper = new DueDateKeeper(_street.Database, _street.Time);
        _keeper.Attach();
        _worker = new DueDateWorker(_keeper, _street.Time, NullLogger<DueDateWorker>.Instance);
    }

    private DateOnly Today => _street.Clock.Today;

    private ShopStore Shops => new(_street.Database);

    private MoveStore Moves => new(_street.Database, _street.Clock);

    public void Dispose()
    {
        _worker.Dispose();
        _street.Dispose();
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Kept_date_is_what_a_fresh_computation_gives_after_any_sequence_of_changes(int seed)
    {
        var random = new Random(seed);
        Fill();
        AssertFresh("the start");
        for (var step = 0; step < 70; step++)
        {
            var change = Changes[random.Next(Changes.Length)];
            change.Do(this, random);
            AssertFresh($"step {step}, {change.Name}, seed {seed}");
        }
        Assert.NotEqual(0, _street.Records.Count("racket", "due_on IS NOT NULL"));
    }

    [Fact]
    public void Date_moves_in_the_transaction_of_what_moves_it_and_goes_back_with_it()
    {
        Fill();
        var before = _street.Records.Text("SELECT due_on FROM racket WHERE id = 1");

        Assert.Throws<InvalidOperationException>(() => _street.Database.Write(c =>
        {
            c.Execute("UPDATE racket SET own_date = '2027-03-01' WHERE id = 1");
            throw new InvalidOperationException("The lights went out.");
        }));

        Assert.Equal(before, _street.Records.Text("SELECT due_on FROM racket WHERE id = 1"));
        _street.Records.Change("UPDATE racket SET own_date = '2027-03-01' WHERE id = 1");
        Assert.Equal("2027-03-01 OwnersDate", _street.Records.Text("SELECT due_on || ' ' || due_because FROM racket WHERE id = 1"));
    }

    [Fact]
    public void Settings_move_all_dates_in_the_background_and_say_how_far_it_got()
    {
        Fill();
        var before = _street.Records.Text("SELECT due_on FROM racket WHERE id = 1");
        Assert.Equal((0, Players), _keeper.Progress());

        Shorten(7);

        Assert.Equal((Players, Players), _keeper.Progress());
        Assert.Equal(before, _street.Records.Text("SELECT due_on FROM racket WHERE id = 1"));
        _worker.Run();
        Assert.Equal((0, Players), _keeper.Progress());
        Assert.NotEqual(before, _street.Records.Text("SELECT due_on FROM racket WHERE id = 1"));
    }

    [Fact]
    public void Logged_racket_moves_on_with_the_days_once_a_night()
    {
        Fill();
        _street.Records.Change("UPDATE player SET rule = 'Hours'; INSERT INTO logged_hours (racket_id, played_on, hours) VALUES (1, '2026-11-24', 2)");
        var before = DateOnly.Parse(_street.Records.Text("SELECT due_on FROM racket WHERE id = 1"), System.Globalization.CultureInfo.InvariantCulture);
        _worker.Run();

        _street.Time.Advance(TimeSpan.FromDays(1));
        _worker.Run();

        Assert.Equal(before.AddDays(1), DateOnly.Parse(_street.Records.Text("SELECT due_on FROM racket WHERE id = 1"), System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Hours_are_frozen_when_strings_come_out_and_later_habits_leave_them_alone()
    {
        Fill();
        var job = _street.Records.Text("SELECT bed_id FROM forecast WHERE racket_id = 1");
        _street.Records.Change($"UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear' WHERE id = {job}");
        var frozen = _street.Records.Text($"SELECT hours_played FROM job WHERE id = {job}");

        _street.Records.Change("UPDATE player SET times_a_week = 12");

        Assert.NotEqual("", frozen);
        Assert.Equal(frozen, _street.Records.Text($"SELECT hours_played FROM job WHERE id = {job}"));
        _street.Records.Change($"UPDATE job SET ended_on = '2026-11-10' WHERE id = {job}");
        Assert.NotEqual(frozen, _street.Records.Text($"SELECT hours_played FROM job WHERE id = {job}"));
    }

    [Fact]
    public void Label_keeps_the_date_it_was_printed_with()
    {
        Fill();
        Moves.MarkStrung(Who.Shop, _street.Records.Job(1), new StrungEntry { StrungOn = Today });
        var label = _street.Records.Text("SELECT label_date FROM forecast WHERE racket_id = 1");
        Assert.Equal(_street.Records.Text("SELECT due_on FROM racket WHERE id = 1"), label);

        _street.Records.Change("UPDATE player SET times_a_week = 7");

        Assert.NotEqual(_street.Records.Text("SELECT due_on FROM racket WHERE id = 1"), label);
        Assert.Equal(label, _street.Records.Text("SELECT label_date FROM forecast WHERE racket_id = 1"));
    }

    [Fact]
    public void Strings_typed_in_long_after_they_went_in_have_no_label_to_speak_of()
    {
        Fill();
        Assert.Equal(0, _street.Records.Count("job", "label_date IS NOT NULL"));

        Moves.MarkStrung(Who.Shop, _street.Records.Job(1), new StrungEntry { StrungOn = Today });
        _street.Records.Change("UPDATE player SET times_a_week = 3");

        Assert.Equal("1", _street.Records.Text("SELECT group_concat(racket_id) FROM job WHERE label_date IS NOT NULL"));
    }

    [Fact]
    public void Older_strings_that_are_in_again_have_no_label_to_speak_of()
    {
        Fill();
        var newer = _street.Records.Job(1);
        Moves.MarkStrung(Who.Shop, newer, new StrungEntry { StrungOn = Today });

        new BackStore(_street.Database, _street.Time).Back(Who.Shop, newer, JobState.Strung);

        Assert.NotEqual($"{newer}", _street.Records.Text("SELECT bed_id FROM forecast WHERE racket_id = 1"));
        Assert.Equal("", _street.Records.Text("SELECT label_date FROM forecast WHERE racket_id = 1"));
    }

    private void Fill()
    {
        _street.Records.Shop();
        var client = _street.Records.Client("Odalys Ferran");
        _street.Records.Change("INSERT INTO instrument (name, scale) VALUES ('Stiffness gauge', 'Stiffness'), ('Hertz gauge', 'Hertz')");
        for (var p = 0; p < Players; p++)
        {
            var player = _street.Records.Player(client, $"Player {p}", timesAWeek: 1 + p);
            for (var r = 1; r <= RacketsEach; r++)
            {
                var racket = _street.Records.Racket(player, r, r == 3 ? "Spare" : "InTurn");
                _street.Records.Reading(_street.Records.Job(racket, Today.AddDays(-40 - r)), 62);
            }
        }
        _worker.Run();
    }

    private void AssertFresh(string after)
    {
        var values = Shops.Get().StartingValues;
        var rows = _street.Database.Read(c => Histories.Into(c, c.Query<Row>($"SELECT {ForecastRow.Columns}, r.due_on, r.due_soon_on, r.due_because FROM racket r JOIN forecast f ON f.racket_id = r.id")));
        foreach (var (row, by) in rows.Select(row => (row, row.Work(Today, values))))
            Assert.True((row.DueOn, row.DueSoonOn, row.DueBecause) == (by.Due, by.SoonOn, by.DecidedBy), $"Racket {row.RacketId} after {after}: kept {row.DueOn} {row.DueBecause}, fresh {by.Due} {by.DecidedBy}");
        Assert.Equal(0, _street.Records.Count("due_again"));
        Assert.Equal(0, _street.Records.Count("job", "ended_on IS NOT NULL AND hours_played IS NULL"));
    }

    private sealed record Row : ForecastRow
    {
        public DateOnly? DueOn { get; init; }
        public DateOnly? DueSoonOn { get; init; }
        public LimitKind? DueBecause { get; init; }
    }

    private void Shorten(double hours)
    {
        var shop = Shops.Get();
        var tennis = shop.StartingValues.Tennis with { Polyester = new MaterialValues(hours) };
        Assert.IsType<Outcome.Done>(new SettingsStore(_street.Database).SaveLives(Who.Shop, shop.Version, shop.StartingValues with { Tennis = tennis }));
    }

    private static long Player(Random random) => random.Next(1, Players + 1);

    private static long Racket(Random random) => random.Next(1, (Players * RacketsEach) + 1);

    private void Sql(string sql, object? values = null) => _street.Records.Change(sql, values);
}
