using Dapper;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Storage;

/// <summary>Odalys's Pim and another client's Ewan: whose pages a write ends.</summary>
public sealed class ChangesTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _ewan;
    private readonly long _mark;

    public ChangesTests()
    {
        _ewan = _street.Records.Player(_street.Ewan, "Ewan Lockyer");
        _street.Records.Reading(_street.Strung, 62);
        _mark = Changes.Now;
    }

    private Changes Changes => _street.Database.Changes;

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("UPDATE client SET found_choice = 'Message' WHERE name LIKE 'Odalys%'")]
    [InlineData("UPDATE player SET note = 'Left-handed.' WHERE name LIKE 'Pim%'")]
    [InlineData("INSERT INTO pause (player_id, from_on) SELECT id, '2026-11-20' FROM player WHERE name LIKE 'Pim%'")]
    [InlineData("UPDATE racket SET tape_colour = 'blue'")]
    [InlineData("INSERT INTO spec (racket_id, measured_on, weight, strung, grip_on, dampener_on) SELECT id, '2026-11-20', 300, 1, 1, 0 FROM racket")]
    [InlineData("INSERT INTO logged_hours (racket_id, played_on, hours) SELECT id, '2026-11-20', 2 FROM racket")]
    [InlineData("UPDATE job SET note = 'Slow.'")]
    [InlineData("DELETE FROM job")]
    [InlineData("DELETE FROM tag")]
    [InlineData("UPDATE reading SET value = 61")]
    [InlineData("DELETE FROM reading")]
    public void Write_about_one_player_ends_what_was_kept_of_that_player_alone(string sql)
    {
        Assert.NotEqual(0, _street.Database.Write(c => c.Execute(sql)));

        Assert.Equal((false, true), (Changes.IsFresh(_street.Pim, _mark), Changes.IsFresh(_ewan, _mark)));
        Assert.True(Changes.IsFresh(_street.Pim, Changes.Now));
    }

    [Theory]
    [InlineData("UPDATE shop SET town = 'Ferrygate'")]
    [InlineData("INSERT INTO message (purpose, words) VALUES ('Ready', 'Come.')")]
    [InlineData("INSERT INTO care_guide (name, title, markdown) VALUES ('gut', 'Gut', 'Keep it dry.')")]
    [InlineData("UPDATE string_kind SET name = name || '!'")]
    [InlineData("UPDATE instrument SET name = name || '!'")]
    public void Write_about_what_all_depend_on_ends_everything(string sql)
    {
        Assert.NotEqual(0, _street.Database.Write(c => c.Execute(sql)));

        Assert.Equal((false, false), (Changes.IsFresh(_street.Pim, _mark), Changes.IsFresh(_ewan, _mark)));
    }

    [Theory]
    [InlineData("UPDATE event_entry SET on_court = 1")]
    [InlineData("UPDATE event_technician SET away = 1")]
    [InlineData("INSERT INTO event_hours (technician_id, is_break, from_at, to_at) VALUES (1, 1, '2026-11-25 10:00', '2026-11-25 10:20')")]
    [InlineData("UPDATE event SET name = 'Harbour Open 2' WHERE id = 1")]
    [InlineData("UPDATE job SET state = 'OnMachine', strung_on = NULL, collected_on = NULL")]
    [InlineData("DELETE FROM job")]
    public void Write_at_a_desk_tells_those_who_look_at_that_desk_once(string sql)
    {
        _street.Records.Change("""
            INSERT INTO event (name, from_on, to_on) VALUES ('Harbour Open', '2026-11-25', '2026-11-25'), ('Another', '2026-11-25', '2026-11-25');
            INSERT INTO event_technician (event_id, name) VALUES (1, 'Runa');
            INSERT INTO event_entry (job_id, event_id, number, came_at) VALUES (@Strung, 1, 1, '2026-11-25 09:00');
            """, new { _street.Strung });
        var told = new List<long>();
        Changes.DeskChanged += told.Add;

        Assert.NotEqual(0, _street.Database.Write(c => c.Execute(sql)));
        _street.Records.Change("UPDATE client SET note = 'elsewhere'");

        Assert.Equal([1], told);
    }

    [Fact]
    public void Racket_that_changes_hands_ends_what_was_kept_of_both()
    {
        _street.Database.Write(c => c.Execute("UPDATE racket SET player_id = @_ewan", new { _ewan }));

        Assert.Equal((false, false), (Changes.IsFresh(_street.Pim, _mark), Changes.IsFresh(_ewan, _mark)));
    }

    [Fact]
    public void What_was_read_before_a_write_but_kept_after_it_is_not_fresh()
    {
        var before = Changes.Now;
        _street.Database.Write(c => c.Execute("UPDATE player SET note = 'Left-handed.' WHERE id = @Pim", new { _street.Pim }));

        Assert.False(Changes.IsFresh(_street.Pim, before));
    }

    [Fact]
    public void Write_that_changes_nothing_or_was_undone_ends_nothing_or_more_than_it_must()
    {
        _street.Database.Write(c => c.Execute("UPDATE player SET note = 'x' WHERE id = -1"));
        Assert.Equal(_mark, Changes.Now);

        Assert.Throws<InvalidOperationException>(() => _street.Database.Write(c =>
            c.Execute("UPDATE player SET note = 'x' WHERE id = @Pim", new { _street.Pim }) > 0 ? throw new InvalidOperationException() : 0));
        Assert.True(Changes.IsFresh(_ewan, _mark));
    }

    [Fact]
    public void Closed_file_counts_as_changed_in_everything()
    {
        _street.Database.Dispose();

        Assert.Equal((false, false), (Changes.IsFresh(_street.Pim, _mark), Changes.IsFresh(_ewan, _mark)));
        Assert.NotEqual(_mark, Changes.OfAll);
    }

    [Fact]
    public void More_players_than_are_remembered_count_as_all()
    {
        _street.Database.Write(c => c.Execute("""
            WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < @Most)
            INSERT INTO player (client_id, name, junior) SELECT @Ewan, 'Player ' || i, 0 FROM n
            """, new { Most = Changes.MostPlayers + 1, _street.Ewan }));

        Assert.False(Changes.IsFresh(_street.Pim, _mark));
    }

    /// <summary>Whoever adds a table says here whether a page of a player's depends on it.</summary>
    [Fact]
    public void Every_table_is_watched_or_known_to_matter_to_no_players_page()
    {
        string[] others =
        [
            "account", "condition", "photo", "added_mass", "audit", "backup_setting", "forgotten", "frame", "frame_place", "range_confirm", "deleted_ticket", "demo", "due_again", "due_day", "event", "event_entry", "event_hours", "event_session", "event_technician", "found_event", "label_logo", "label_setting", "invitation", "job_deed", "job_stop", "stop", "loan", "loan_racket", "machine", "machine_check", "link_request", "migration", "name_order", "client_request",
            "bill", "bill_line", "charge", "charge_change", "extra_price", "money_setting", "payment", "payment_share", "prepaid", "prepaid_use", "string_price", "string_stock", "stock_move", "stock_again", "outbox", "own_page_code", "own_page_link", "own_page_session", "passkey", "past_job", "payer", "reminder", "reminder_batch",
            "reminder_batch_client", "reminder_racket", "session", "shared_tablet", "pin_try", "setup_link", "stringing_list", "stringing_list_heading", "stringing_list_record", "stringing_list_row", "tag_roll", "used_address", "used_form_key", "write_probe",
        ];
        var tables = _street.Database.Read(c => c.Query<string>("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'search%'").AsList());

        Assert.Equal(tables.Order(StringComparer.Ordinal), ChangeWatch.OfPlayers.Keys.Concat(ChangeWatch.OfAll).Concat(others).Order(StringComparer.Ordinal));
    }
}
