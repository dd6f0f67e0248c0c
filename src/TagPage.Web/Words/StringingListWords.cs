using TagPage.Records.StringingLists;

namespace TagPage.Web.Words;

/// <summary>Why a list of stringings cannot be taken back.</summary>
public static class StringingListWords
{
    /// <summary>What stands on a list that was to be taken back.</summary>
    public static string Of(IEnumerable<StandsOnIt> by) => string.Join(", ", by.Select(Of));

    /// <summary>What can be done about it; a change can never be undone.</summary>
    public static string Advice(IEnumerable<StandsOnIt> by) => by.Any(on => on.IsChange)
        ? "What was changed stays changed, so the list stays."
        : "Delete what was added since, where its own page lets you, and press again, or leave the list as it is.";

    private static string Of(StandsOnIt on) => $"{What(on)} ({string.Join(", ", on.On.Select(Name))}{(on.Rows > on.On.Count ? ", …" : "")})";

    /// <summary>“2 jobs changed since”, “1 tag”.</summary>
    public static string What(StandsOnIt on) => on.IsChange ? $"{on.Rows} {Noun(on.Table, on.Rows)} changed since" : $"{on.Rows} {Noun(on.Table, on.Rows)}";

    public static string Name(StandsOnIt.Record record) => record.Kind switch
    {
        "job" => $"ticket {record.Number}",
        "racket" => $"{record.Name}, racket {record.Number}",
        _ => record.Name,
    };

    /// <summary>The shop’s page about it.</summary>
    public static string Page(StandsOnIt.Record record) => record.Kind switch
    {
        "job" => $"/shop/jobs/{record.Id}",
        "racket" => $"/shop/rackets/{record.Id}",
        "player" => $"/shop/players/{record.Id}",
        "client" => $"/shop/clients/{record.Id}",
        _ => $"/shop/strings/edit/{record.Id}",
    };

    private static string Noun(string table, int rows) => table switch
    {
        "job" => rows == 1 ? "job" : "jobs",
        "racket" => rows == 1 ? "racket" : "rackets",
        "player" => rows == 1 ? "player" : "players",
        "client" => rows == 1 ? "client" : "clients",
        "string_kind" => rows == 1 ? "string" : "strings",
        "tag" => rows == 1 ? "tag" : "tags",
        "reading" => rows == 1 ? "reading" : "readings",
        "payment" or "payment_share" => rows == 1 ? "payment" : "payments",
        "bill" or "bill_line" => rows == 1 ? "line of a bill" : "lines of bills",
        "charge" or "charge_change" => rows == 1 ? "price" : "prices",
        "reminder" or "reminder_racket" => rows == 1 ? "reminder" : "reminders",
        "outbox" => rows == 1 ? "email" : "emails",
        "own_page_link" => rows == 1 ? "private link" : "private links",
        "string_stock" or "string_price" or "stock_move" => rows == 1 ? "entry of stock or prices" : "entries of stock or prices",
        _ => (rows == 1 ? "record: " : "records: ") + table.Replace('_', ' '),
    };
}
