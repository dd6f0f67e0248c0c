namespace TagPage.Records.Demo;

/// <summary>Every column that holds a day, by table. The demo moves them all, so that it is always up to date.</summary>
public static class DemoDates
{
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Columns { get; } = new Dictionary<string, IReadOnlyList<string>>
    {
        ["racket"] = ["own_date", "lost_since", "not_before", "elsewhere_on", "left_on", "due_on", "due_soon_on"],
        ["client"] = ["found_choice_on", "reminders_changed_on", "seen_on"],
        ["player"] = ["label_name_on"],
        ["spec"] = ["measured_on"],
        ["added_mass"] = ["added_on", "removed_on"],
        ["job"] = ["received_on", "promised_for", "strung_on", "collected_on", "paid_on", "ended_on", "label_date", "done_on"],
        ["job_request"] = ["drop_off_by", "needed_by"],
        ["reading"] = ["taken_on"],
        ["pause"] = ["from_on", "to_on"],
        ["logged_hours"] = ["played_on"],
        ["due_day"] = ["day"],
        ["closed_days"] = ["from_on", "to_on"],
        ["reminder_racket"] = ["due", "elsewhere_on", "elsewhere_before"],
        ["feel"] = ["said_on"],
        ["past_job"] = ["received_on", "strung_on", "done_on", "paid_on"],
        ["event"] = ["from_on", "to_on"],
        ["string_stock"] = ["since"],
        ["payment"] = ["paid_on"],
        ["prepaid"] = ["bought_on"],
        ["prepaid_use"] = ["used_on"],
        ["bill"] = ["from_on", "to_on", "issued_on"],
        ["bill_line"] = ["strung_on"],
        ["loan"] = ["lent_on", "due_on", "back_on"],
        ["machine"] = ["made_on"],
        ["machine_check"] = ["checked_on"],
        ["demo"] = ["day"],
    };

    /// <summary>Instants that the pages show beside those days.</summary>
    public static IReadOnlyList<(string Table, string Column)> Instants { get; } = [("found_event", "at"), ("stock_move", "made_at")];

    /// <summary>Times of events, by the shop's clock.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> WallTimes { get; } = new Dictionary<string, IReadOnlyList<string>>
    {
        ["event_hours"] = ["from_at", "to_at"],
        ["event_entry"] = ["came_at", "needed_by", "not_before", "promised", "moved_from", "started_at", "strung_at", "handed_at"],
    };
}
