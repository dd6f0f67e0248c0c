using Dapper;
using TagPage.Core.Customising;
using TagPage.Core.Forecast;
using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>Writes the shop's one row and its own words, a topic at a time; every topic counts the same version.</summary>
public sealed class SettingsStore(Database database)
{
    public Outcome SaveShop(Who who, ShopEntry input) => Save(who, SaveShopSql, new
    {
        input.Version,
        input.Name,
        Phone = Phones.Read(input.Phone, input.Country!),
        input.Mail,
        Street = input.Street ?? "",
        Town = input.Town ?? "",
        input.Country,
        OpeningHours = input.OpeningHours ?? "",
        input.Language,
        input.NamesIn,
        input.ByLastWord,
        input.TimeZone,
        input.Currency,
        TensionUnit = input.TensionUnit.ToString(),
        input.UnseenMonths,
    });

    // The first save makes the row; after that only the version it was read under may be replaced.
    private const string SaveShopSql = """
        INSERT INTO shop (id, name, phone, mail, street, town, country, opening_hours, language, names_in, by_last_word, time_zone, currency,
                          tension_unit, unseen_months)
        VALUES (1, @Name, @Phone, @Mail, @Street, @Town, @Country, @OpeningHours, @Language, @NamesIn, @ByLastWord, @TimeZone, @Currency,
                @TensionUnit, @UnseenMonths)
        ON CONFLICT (id) DO UPDATE
        SET name = @Name, phone = @Phone, mail = @Mail, street = @Street, town = @Town, country = @Country,
            opening_hours = @OpeningHours, language = @Language, names_in = @NamesIn, by_last_word = @ByLastWord, time_zone = @TimeZone, currency = @Currency, tension_unit = @TensionUnit,
            unseen_months = @UnseenMonths, version = version + 1
        WHERE version = @Version
        """;

    public Outcome SavePage(Who who, HomePageEntry input) => Save(who, SavePageSql, new
    {
        input.Version,
        HomeMarkdown = input.HomeMarkdown ?? "",
        Accent = input.Accent?.ToUpperInvariant(),
    });

    private const string SavePageSql = """
        UPDATE shop SET home_markdown = @HomeMarkdown, accent = @Accent, version = version + 1 WHERE id = 1 AND version = @Version
        """;

    /// <summary>Values equal to the product's own are not kept, so that they follow the product.</summary>
    public Outcome SaveLives(Who who, int version, StartingValues values) =>
        Save(who, SaveLivesSql, new { Version = version, Values = values == StartingValues.Default ? null : values });

    private const string SaveLivesSql = """
        UPDATE shop SET starting_values = @Values, version = version + 1 WHERE id = 1 AND version = @Version
        """;

    public Outcome SaveCustomising(Who who, int version, CustomisingValues values) =>
        Save(who, SaveCustomisingSql, new { Version = version, Values = values == new CustomisingValues() ? null : values });

    private const string SaveCustomisingSql = """
        UPDATE shop SET customising_values = @Values, version = version + 1 WHERE id = 1 AND version = @Version
        """;

    public Outcome SaveReminders(Who who, RemindersEntry input) => Save(who, SaveRemindersSql, new { input.Version, input.DaysBetween },
        (MessagePurpose.Reminder, input.Mail), (MessagePurpose.ReminderSms, input.Sms));

    private const string SaveRemindersSql = """
        UPDATE shop SET days_between_reminders = @DaysBetween, version = version + 1 WHERE id = 1 AND version = @Version
        """;

    public Outcome SaveBench(Who who, BenchEntry input) => Save(who, SaveBenchSql, input);

    private const string SaveBenchSql = """
        UPDATE shop SET bench_timer = @Timer, single_keys = @SingleKeys, version = version + 1 WHERE id = 1 AND version = @Version
        """;

    public Outcome SaveHelpersSecondStep(Who who, int version, bool demanded) => Save(who, SaveSecondStepSql, new { Version = version, demanded });

    private const string SaveSecondStepSql = """
        UPDATE shop SET helpers_second_step = @demanded, version = version + 1 WHERE id = 1 AND version = @Version
        """;

    public Outcome SaveMessages(Who who, MessagesEntry input) => Save(who, SaveMessagesSql, new { input.Version, input.QuietFromHour, input.QuietUntilHour },
        (MessagePurpose.Ready, input.Ready), (MessagePurpose.Received, input.Received), (MessagePurpose.Notice, input.Notice));

    private const string SaveMessagesSql = """
        UPDATE shop
        SET quiet_from_hour = @QuietFromHour, quiet_until_hour = @QuietUntilHour, version = version + 1
        WHERE id = 1 AND version = @Version
        """;

    private Outcome Save(Who who, string sql, object values, params (MessagePurpose Purpose, OwnWords Own)[] messages) => database.WriteAsOwner(who, c =>
    {
        if (c.Execute(sql, values) != 1)
            return Outcome.Stale;
        foreach (var (purpose, own) in messages)
            c.Execute(SaveMessageSql, new { Purpose = purpose.ToString(), own.Subject, own.Text });
        return new Outcome.Done(1);
    });

    private const string SaveMessageSql = """
        INSERT INTO message (purpose, subject, words) VALUES (@Purpose, @Subject, @Text)
        ON CONFLICT (purpose) DO UPDATE SET subject = @Subject, words = @Text
        """;
}
