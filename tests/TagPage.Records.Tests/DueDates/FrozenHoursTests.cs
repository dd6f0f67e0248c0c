using System.Globalization;
using TagPage.Records.DueDates;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>Pim plays 3 hours a week with a racket strung on 1 November; what is frozen on the 22nd are 21 days of it, 9 hours.</summary>
public sealed class FrozenHoursTests : IDisposable
{
    private readonly Street _street = new();

    public FrozenHoursTests()
    {
        new DueDateKeeper(_street.Database, _street.Time).Attach();
        _street.Records.Reading(_street.Strung, 62);
        Sql("INSERT INTO reading (job_id, first, taken_on, instrument_id, value) SELECT job_id, 0, '2026-11-22', instrument_id, 55 FROM reading");
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Pause_entered_afterwards_thaws_the_readings_inside_it()
    {
        Assert.Equal(9, Read());
        Sql($"INSERT INTO pause (player_id, from_on, to_on) VALUES ({_street.Pim}, '2026-11-08', '2026-11-14')");
        Assert.Equal(6, Read());
        Sql("UPDATE pause SET to_on = '2026-11-09'");
        Assert.Equal(19 * 3 / 7.0, Read(), 9);
        Sql("DELETE FROM pause");
        Assert.Equal(9, Read());
        Assert.Equal(0, Number("SELECT hours FROM reading WHERE first = 1"));
    }

    [Fact]
    public void Pause_entered_afterwards_thaws_the_strings_that_came_out()
    {
        ComesOut(_street.Strung);
        Assert.Equal(9, Played(_street.Strung));
        Sql($"INSERT INTO pause (player_id, from_on) VALUES ({_street.Pim}, '2026-11-15')");
        Assert.Equal(6, Played(_street.Strung));
    }

    [Theory]
    [InlineData("2026-11-23", null)]
    [InlineData("2026-10-01", "2026-10-31")]
    public void Pause_of_another_time_leaves_frozen_hours_alone_whatever_the_habit_is_now(string from, string? to)
    {
        ComesOut(_street.Strung);
        Sql("UPDATE player SET times_a_week = 12");
        Sql("INSERT INTO pause (player_id, from_on, to_on) VALUES (@Pim, @from, @to)", new { _street.Pim, from, to });
        Assert.Equal((9, 9), (Read(), Played(_street.Strung)));
    }

    [Fact]
    public void Hours_noted_afterwards_thaw_what_was_frozen_after_them_and_come_back_with_the_note()
    {
        ComesOut(_street.Strung);
        Sql($"INSERT INTO logged_hours (racket_id, played_on, hours) VALUES ({_street.Racket}, '2026-11-10', 0)");
        Assert.Equal((6, 6), (Read(), Played(_street.Strung)));
        Sql("UPDATE logged_hours SET hours = 5");
        Assert.Equal((11, 11), (Read(), Played(_street.Strung)));
        Sql("DELETE FROM logged_hours");
        Assert.Equal((9, 9), (Read(), Played(_street.Strung)));
    }

    [Fact]
    public void Another_rackets_note_thaws_nothing()
    {
        var other = _street.Records.Racket(_street.Pim, 2);
        Sql("UPDATE player SET times_a_week = 12");
        Sql($"INSERT INTO logged_hours (racket_id, played_on, hours) VALUES ({other}, '2026-11-10', 0)");
        Assert.Equal(9, Read());
    }

    [Theory]
    [InlineData("Spare", 0.1 / 1.1)]
    [InlineData("InTurn", 0.5)]
    [InlineData("Resting", 0.5)]
    public void Strings_that_come_out_were_played_for_the_rackets_share(string state, double share)
    {
        var job = _street.Records.Job(_street.Records.Racket(_street.Pim, 2, state), new(2026, 11, 1));
        ComesOut(job);
        Assert.Equal(9 * share, Played(job), 9);
    }

    [Fact]
    public void Kept_date_counts_from_the_day_on_the_shops_wall()
    {
        // 12:00 UTC on the 25th is 1:00 on the 26th there. The noted week began with 22 days of habit, 9.43 h, and holds 2 h so
        // far: of 16.64 h 12 whole days of play are left.
        _street.Time.Advance(TimeSpan.FromHours(2));
        Sql("UPDATE shop SET time_zone = 'Pacific/Auckland'; UPDATE player SET rule = 'Hours'");
        Sql($"INSERT INTO logged_hours (racket_id, played_on, hours) VALUES ({_street.Racket}, '2026-11-24', 2)");
        Assert.Equal("2026-12-08", _street.Records.Text("SELECT due_on FROM racket"));
    }

    private double Read() => Number("SELECT hours FROM reading WHERE first = 0");

    private double Played(long job) => Number($"SELECT hours_played FROM job WHERE id = {job}");

    private double Number(string sql) => double.Parse(_street.Records.Text(sql), CultureInfo.InvariantCulture);

    private void ComesOut(long job) => Sql($"UPDATE job SET ended_on = '2026-11-22', ended_how = 'CutOut' WHERE id = {job}");

    private void Sql(string sql, object? values = null) => _street.Records.Change(sql, values);
}
