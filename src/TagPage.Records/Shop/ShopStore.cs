using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>Reads the shop's one row, kept in memory until something is written.</summary>
public sealed class ShopStore(Database database)
{
    private sealed record Kept(long Generation, ShopDetails Shop);

    private Kept? _kept;

    /// <summary>The shop, or a nameless one as long as it has not been set up.</summary>
    public ShopDetails Get()
    {
        var generation = database.Generation;
        if (_kept is { } kept && kept.Generation == generation)
            return kept.Shop;
        var shop = database.Read(c => c.QuerySingleOrDefault<ShopDetails>(GetSql)) ?? new ShopDetails();
        _kept = new Kept(generation, shop);
        return shop;
    }

    private const string GetSql = """
        SELECT name, phone, mail, street, town, country, opening_hours, home_markdown, accent,
               time_zone, currency, tension_unit, unseen_months,
               days_between_reminders, reminder_subject, reminder_markdown, reminder_sms,
               ready_subject, ready_markdown, received_subject, received_markdown, notice_subject, notice_text, quiet_from_hour, quiet_until_hour,
               COALESCE(starting_values, '{}') AS starting_values, version
        FROM shop
        WHERE id = 1
        """;
}
