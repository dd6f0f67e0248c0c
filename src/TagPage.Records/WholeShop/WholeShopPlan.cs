using System.Collections.Frozen;

namespace TagPage.Records.WholeShop;

/// <summary>
/// What a shop takes along when it moves out, and an empty one takes back. Every table stands here, with its reason where it stays. Of a
/// table that goes, all columns go but those named; a test finds names that sound like secrets.
/// </summary>
public static class WholeShopPlan
{
    /// <param name="Name">Of the table, and of its file.</param>
    /// <param name="Kept">Columns that stay: made anew where it is taken back, or meaning nothing there.</param>
    public sealed record Table(string Name, string Kept = "")
    {
        /// <summary>Columns whose bytes are files of their own in the zip; a cell holds the file's name.</summary>
        public string[] Files { get; init; } = [];

        public FrozenSet<string> Stays { get; } = Kept.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToFrozenSet();
    }

    /// <summary>In the order in which they come in: nothing that is written sets off the account of what comes after it.</summary>
    public static IReadOnlyList<Table> Given { get; } =
    [
        new("shop"), new("opening_span"), new("closed_days"), new("message"), new("care_guide"), new("label_setting"), new("label_logo"),
        new("money_setting"), new("extra_price"), new("string_kind"), new("string_price"), new("frame"), new("instrument"), new("machine"), new("machine_check"), new("stop"),
        new("payer", "name_key"), new("client", "name_key secret seen_on"), new("client_request"), new("loan_racket"), new("loan"), new("player", "name_key"), new("pause"),
        new("racket"), new("logged_hours"), new("spec"), new("frame_place"), new("added_mass"), new("tag_roll", "secret"), new("tag"),
        new("job", "told_mail_id"), new("visit_work"), new("job_request"), new("job_stop"), new("range_confirm"), new("condition"), new("photo") { Files = ["small", "picture"] }, new("reading"), new("feel"), new("past_job"), new("deleted_ticket"),
        new("charge"), new("charge_change"), new("payment"), new("payment_share"), new("prepaid"), new("prepaid_use"), new("bill"), new("bill_line"), new("string_stock", "left_cm"), new("stock_move"),
        new("event", "secret"), new("event_technician"), new("event_hours"), new("event_entry"),
        new("reminder", "secret stop_secret"), new("reminder_racket"),
    ];

    public static IReadOnlyDictionary<string, string> NotGiven { get; } = new Dictionary<string, string>
    {
        ["account"] = "who signs in: passwords and stamps stay, and everybody is asked in anew",
        ["shared_tablet"] = "tablets that several people share",
        ["pin_try"] = "wrong PINs",
        ["job_deed"] = "which account did what: accounts stay",
        ["session"] = "browsers that are signed in",
        ["passkey"] = "keys are tied to the address they were made at",
        ["invitation"] = "private links to accounts",
        ["setup_link"] = "a one-time link",
        ["own_page_link"] = "private links, which only the old program’s key makes",
        ["own_page_session"] = "browsers of clients",
        ["own_page_code"] = "codes that were sent",
        ["link_request"] = "gone within seconds",
        ["event_session"] = "tablets of an event’s helpers",
        ["outbox"] = "emails on their way would be sent twice",
        ["reminder_batch"] = "reminders under way would be sent twice",
        ["reminder_batch_client"] = "reminders under way would be sent twice",
        ["found_event"] = "what finders wrote is kept for 30 days, where they wrote it",
        ["forgotten"] = "marks that only the old program’s backups are compared with",
        ["audit"] = "what happened in the old program",
        ["backup_setting"] = "folders of the old computer",
        ["chosen_address"] = "where the old program is reached",
        ["used_address"] = "where the old program was reached",
        ["used_form_key"] = "forms that were sent to the old program",
        ["write_probe"] = "always empty",
        ["stock_again"] = "for moments only",
        ["due_again"] = "for moments only",
        ["due_day"] = "worked out anew",
        ["name_order"] = "worked out anew",
        ["search"] = "made of the records",
        ["search_note"] = "made of the records",
        ["stringing_list"] = "the way back from a list that was brought in ends with the move",
        ["stringing_list_row"] = "lines on their way in",
        ["stringing_list_record"] = "the way back from a list ends with the move",
        ["stringing_list_heading"] = "what old lists meant",
        ["demo"] = "marks an invented shop",
        ["migration"] = "schema changes",
    };

    /// <summary>What makes a shop one that is in use: nothing may be in these when another is taken in.</summary>
    internal static readonly string[] InUse = ["client", "payer", "job", "past_job", "deleted_ticket", "payment", "bill", "tag", "tag_roll", "event"];
}
