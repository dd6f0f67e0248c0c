namespace TagPage.Records.Privacy;

/// <summary>
/// What of each table a client can take away, column by column. A column that stands in neither list has no decision yet,
/// and a test says so.
/// </summary>
public static class ExportPlan
{
    /// <param name="Name">Of the table, and of its file.</param>
    /// <param name="Where">SQL: which of its rows are the client's (@client).</param>
    /// <param name="Given">Columns that are given.</param>
    /// <param name="Kept">Columns that are not, because they say nothing about a person or are somebody else's.</param>
    public sealed record Table(string Name, string Where, string Given, string Kept = "")
    {
        /// <summary>The column that keeps a mail in its pieces and is given as words.</summary>
        public string Mail { get; init; } = "";

        /// <summary>The column whose bytes are a file of their own; what is given in its place is that file's name.</summary>
        public string File { get; init; } = "";

        public IReadOnlyList<string> Columns { get; } = Given.Split(' ', StringSplitOptions.RemoveEmptyEntries);

        public IEnumerable<string> Decided => Columns.Concat(Kept.Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    private const string Players = "SELECT id FROM player WHERE client_id = @client";
    private const string Rackets = $"SELECT id FROM racket WHERE player_id IN ({Players})";
    private const string Jobs = $"SELECT id FROM job WHERE racket_id IN ({Rackets})";
    private const string PaysThemselves = "(SELECT payer_id FROM client WHERE id = @client) IS NULL";
    private const string Reminders = "SELECT id FROM reminder WHERE client_id = @client";

    /// <summary>Strings, instruments and the payer go along where the client's rows name them. Versions only count changes.</summary>
    public static IReadOnlyList<Table> Given { get; } =
    [
        new("client", "id = @client",
            "id name phone mail language payer_id reminders reminders_changed_on remind_by quiet_months found_choice found_choice_on found_always "
            + "found_shows_mail second_name second_phone second_mail mail_refused forget_at note", "name_key seen_on secret version"),
        new("payer", "id IN (SELECT payer_id FROM client WHERE id = @client)", "id name", "name_key phone mail note version"),
        new("player", "client_id = @client", "id client_id name junior times_a_week hours_a_time hitting rule every_weeks label_name label_name_on note", "name_key version"),
        new("pause", $"player_id IN ({Players})", "id player_id from_on to_on note"),
        new("logged_hours", $"racket_id IN ({Rackets})", "id racket_id played_on hours note"),
        new("racket", $"id IN ({Rackets})",
            "id player_id number state sport frame tape_colour head_size head_size_unit pattern_mains pattern_crosses length_cm grip own_date "
            + "own_date_note lost_since lost_note not_before elsewhere_on played_as left_on due_on due_because label_tape label_ink label_line specs_on_tag note", "came_from_id due_soon_on calendar_uid calendar_number version"),
        new("spec", $"racket_id IN ({Rackets})",
            "id racket_id measured_on kind weight weight_unit length length_unit balance balance_unit tip_weight swing_weight swing_source pendulum_axis "
            + "pendulum_period_s pendulum_off_s weight_off_g balance_off_mm swing_weight_off weight_balance_r weight_swing_r balance_swing_r stiffness stiffness_scale strung grip_on dampener_on note", "version"),
        new("frame_place", $"racket_id IN ({Rackets})", "id racket_id name at off_axis length_unit paired most weight_unit on_strings"),
        new("added_mass", $"racket_id IN ({Rackets})", "id racket_id place at off_axis length_unit on_strings weight weight_unit material added_on removed_on by_plan noted_after off_by_plan off_noted_after"),
        new("tag", $"racket_id IN ({Rackets})", "code state racket_id made_at linked_at retired_at found_blocked_at", "roll_id"),
        new("job", $"id IN ({Jobs})",
            "id ticket racket_id state mains_id crosses_id mains_supplied_by crosses_supplied_by mains_tension crosses_tension tension_unit "
            + "mains_pre_stretch crosses_pre_stretch pieces received_on received_where promised_for strung_on strung_by machine collected_on done_on price_minor paid_on note "
            + "told_ready_at started_at strung_at ended_on ended_how hours_played label_date", "moved_at told_mail_id version"),
        new("visit_work", $"job_id IN ({Jobs})", "job_id work"),
        new("charge", $"job_id IN ({Jobs}) AND {PaysThemselves}", "id job_id kind words centimetres metre_minor amount_minor tax_bp"),
        new("charge_change", $"job_id IN ({Jobs}) AND {PaysThemselves}", "job_id ticket kind was_minor is_minor made_at", "id made_by"),
        new("payment", "client_id = @client", "id paid_on method amount_minor undoes_id note made_at", "client_id payer_id made_by"),
        new("payment_share", "payment_id IN (SELECT id FROM payment WHERE client_id = @client)", "payment_id job_id past_ticket amount_minor made_at", "id made_by"),
        new("prepaid", "client_id = @client", "id bought_on restrings covers amount_minor tax_bp payment_id note made_at", "client_id payer_id made_by"),
        new("prepaid_use", "prepaid_id IN (SELECT id FROM prepaid WHERE client_id = @client)", "prepaid_id job_id ticket used_on given_back_at made_at", "id made_by"),
        new("bill", "client_id = @client", "id year number to_name to_address from_on to_on issued_on currency language paid_minor cancels_id", "client_id payer_id shop made_at made_by"),
        new("bill_line", "bill_id IN (SELECT id FROM bill WHERE client_id = @client)", "bill_id position prepaid_id ticket strung_on is_visit whose racket desk kind words centimetres metre_minor amount_minor tax_bp", "job_id"),
        new("job_request", $"job_id IN ({Jobs})", "job_id asked_in asked_words expected drop_off_where drop_off_by needed_by"),
        new("job_stop", $"job_id IN ({Jobs})", "job_id left_at collect_at fetched_at brought_at"),
        new("stop", $"id IN (SELECT left_at FROM job_stop WHERE job_id IN ({Jobs}) UNION SELECT collect_at FROM job_stop WHERE job_id IN ({Jobs}))", "id name kind", "position is_ended version"),
        new("event_entry", $"job_id IN ({Jobs})",
            "job_id number team came_at needed_by not_before promised on_court minutes stencil stencil_colour lies started_at strung_at handed_at",
            "event_id moved_from pulled_forward kept_for technician_id"),
        new("range_confirm", $"job_id IN ({Jobs})", "id job_id confirmed_at mains_tension crosses_tension tension_unit least most range_unit"),
        new("condition", $"job_id IN ({Jobs})", "job_id frame frame_words grommets grommets_words bumper bumper_words grip grip_words", "version"),
        new("photo", $"job_id IN ({Jobs})", "id job_id made_at width height picture", "small") { File = "picture" },
        new("reading", $"job_id IN ({Jobs})", "id job_id first taken_on taken_at instrument_id value hours doubtful note"),
        new("feel", $"job_id IN ({Jobs})", "job_id bed more_spin more_control more_comfort note said_on"),
        new("string_kind", $"id IN (SELECT mains_id FROM job WHERE id IN ({Jobs}) UNION SELECT crosses_id FROM job WHERE id IN ({Jobs}))",
            "id name material gauge_mm", "offered note version"),
        new("instrument", $"id IN (SELECT instrument_id FROM reading WHERE job_id IN ({Jobs}))", "id name scale kind", "version"),
        new("reminder", "client_id = @client", "id made_at expires_at sent_how sent_at mail_fate discarded", "client_id secret stop_secret"),
        new("reminder_racket", $"reminder_id IN ({Reminders})",
            "reminder_id racket_id due answer answered_at answered_by weeks elsewhere_on wish_strings wish_tension wish_note job_id", "state_before elsewhere_before"),
        new("found_event", $"client_id = @client AND racket_id IN ({Rackets})", "id code racket_id kind at message contact answered_at wiped_at",
            "secret client_id source form_key language notice_id"),
        new("loan", "client_id = @client", "id loan_racket_id lent_on due_on back_on note", "client_id made_by"),
        new("loan_racket", "id IN (SELECT loan_racket_id FROM loan WHERE client_id = @client)", "id name", "note is_ended version"),
        new("own_page_link", "client_id = @client", "made_by made_at expires_at revoked_at", "id client_id secret"),
        new("own_page_session", "client_id = @client", "made_at", "id_hash client_id link_id fresh_until"),
        new("own_page_code", "client_id = @client", "made_at used_at", "id client_id secret expires_at tries"),
        new("client_request", "client_id = @client", "kind words made_at done_at", "id client_id"),
        new("outbox", "to_client_id = @client", "kind subject body state made_at sent_at to_address",
            "id to_client_id reminder_id event_id link_id code_id bill_id invitation_id message_id not_before tries last_error maybe_sent let_go") { Mail = "body" },
        new("reminder_batch_client", "client_id = @client", "state", "batch_id client_id why reminder_id"),
    ];

    /// <summary>Tables that hold nothing of a client's, each with why.</summary>
    public static IReadOnlyDictionary<string, string> NotGiven { get; } = new Dictionary<string, string>
    {
        ["shop"] = "the shop itself",
        ["frame"] = "what the shop knows about frames",
        ["money_setting"] = "what the shop charges for labour, its tax and its account",
        ["string_stock"] = "how much of each string the shop has",
        ["stock_move"] = "what strings the shop bought, counted and used, by ticket",
        ["stock_again"] = "which tickets take strings from the stock, for moments",
        ["string_price"] = "what the shop charges for strings",
        ["extra_price"] = "what the shop charges on top",
        ["opening_span"] = "when the shop is open",
        ["closed_days"] = "when it is not",
        ["message"] = "the owner's own words for everybody",
        ["backup_setting"] = "what the owner wants of backups",
        ["forgotten"] = "marks of whoever was forgotten, of no person any more",
        ["audit"] = "what the shop did and refused, naming no client but by number",
        ["account"] = "who signs in to the shop",
        ["session"] = "browsers of the shop",
        ["passkey"] = "keys of those who sign in to the shop",
        ["setup_link"] = "sign-in of the shop",
        ["machine"] = "the shop's stringing machines",
        ["machine_check"] = "what they pulled when they were checked",
        ["job_deed"] = "who of the shop did what about a ticket: about those who work there",
        ["shared_tablet"] = "browsers of the shop that several people share",
        ["pin_try"] = "wrong PINs of those who sign in to the shop",
        ["invitation"] = "links for the shop's helpers",
        ["used_form_key"] = "random keys, tied to nobody",
        ["write_probe"] = "always empty",
        ["link_request"] = "gone within seconds",
        ["past_job"] = "jobs of clients who were forgotten: of no person any more",
        ["deleted_ticket"] = "numbers that are not given out again, of no person",
        ["reminder_batch"] = "times of batches, of no person",
        ["event"] = "the shop's events",
        ["event_technician"] = "who strings at an event",
        ["event_hours"] = "when they string",
        ["event_session"] = "tablets of an event's helpers",
        ["label_setting"] = "how the shop prints labels",
        ["label_logo"] = "the shop's mark",
        ["tag_roll"] = "rolls of tags that belonged to nobody when they were made",
        ["care_guide"] = "open to everybody",
        ["used_address"] = "the shop's own web addresses",
        ["chosen_address"] = "the shop's own web address",
        ["due_again"] = "which dates are to be worked out again, for moments",
        ["due_day"] = "the day all dates are of",
        ["name_order"] = "how the order of names was made",
        ["search"] = "words of the search box, the same as in client, player and racket",
        ["search_note"] = "words of the search box, the same as the notes of client, player, racket and job",
        ["stringing_list"] = "lists that were brought in, by name and number of lines",
        ["stringing_list_row"] = "lines of a list on their way in, for moments: they become jobs",
        ["stringing_list_record"] = "which records a list brought, by number",
        ["stringing_list_heading"] = "what the columns of lists mean",
        ["demo"] = "of the demo",
        ["migration"] = "schema changes",
    };
}
