using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>Reads the shop's one row and its own words, kept in memory until one of them is written.</summary>
public sealed class ShopStore(Database database)
{
    private sealed record Kept(long Mark, ShopDetails Shop);

    private sealed record Message
    {
        public MessagePurpose Purpose { get; init; }
        public string Subject { get; init; } = "";
        public string Words { get; init; } = "";
    }

    private Kept? _kept;

    /// <summary>The shop, or a nameless one until it has been set up.</summary>
    public ShopDetails Get()
    {
        var mark = database.Changes.OfAll;
        if (_kept is { } kept && kept.Mark == mark)
            return kept.Shop;
        var shop = database.Read(Load);
        _kept = new Kept(mark, shop);
        return shop;
    }

    private static ShopDetails Load(SqliteConnection connection)
    {
        var own = connection.Query<Message>(MessagesSql).ToDictionary(m => m.Purpose, m => new OwnWords(m.Subject, m.Words));
        OwnWords Of(MessagePurpose purpose) => own.GetValueOrDefault(purpose) ?? new OwnWords();
        return (connection.QuerySingleOrDefault<ShopDetails>(GetSql) ?? new ShopDetails()) with
        {
            Opening = new Opening(connection.Query<OpeningSpan>(WeekSql).AsList(), connection.Query<ClosedDays>(ClosedSql).AsList()),
            Reminder = Of(MessagePurpose.Reminder),
            ReminderSms = Of(MessagePurpose.ReminderSms),
            Ready = Of(MessagePurpose.Ready),
            Received = Of(MessagePurpose.Received),
            Notice = Of(MessagePurpose.Notice),
        };
    }

    private const string GetSql = """
        SELECT name, phone, mail, street, town, country, opening_hours, home_markdown, language, names_in, by_last_word, accent,
               time_zone, currency, tension_unit, unseen_months, days_between_reminders, bench_timer, single_keys, helpers_second_step, quiet_from_hour, quiet_until_hour,
               COALESCE(starting_values, '{}') AS starting_values, COALESCE(customising_values, '{}') AS customising_values, version
        FROM shop
        WHERE id = 1
        """;

    private const string WeekSql = "SELECT weekday, opens_at, closes_at FROM opening_span ORDER BY weekday, opens_at";

    private const string ClosedSql = "SELECT id, from_on, to_on, note FROM closed_days ORDER BY from_on, id";

    private const string MessagesSql = "SELECT purpose, subject, words FROM message";

    /// <summary>Whether there is an amount in the shop's currency, which would read as another's.</summary>
    public bool HasMoney() => database.Read(c => c.ExecuteScalar<bool>(HasMoneySql));

    private const string HasMoneySql = "SELECT EXISTS (SELECT 1 FROM charge) OR EXISTS (SELECT 1 FROM payment)";
}
