using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Import;

/// <summary>Saves what was read, all of it or nothing.</summary>
public sealed class ImportStore(Database database, TimeProvider clock)
{
    /// <summary>What the batch would mean, if these choices were made.</summary>
    public ImportFinding Look(ImportBatch batch, ImportChoices choices) => database.Read(c => Look(c, batch, choices));

    public bool IsDone(string formKey) => database.Read(c => c.ExecuteScalar<bool>(IsDoneSql, new { formKey }));

    private const string IsDoneSql = "SELECT EXISTS (SELECT 1 FROM used_form_key WHERE form_key = @formKey)";

    /// <summary>
    /// Saves a batch without problems in one transaction, once per form key. Nothing was saved where the finding says that
    /// it cannot be.
    /// </summary>
    public ImportFinding Add(ImportBatch batch, ImportChoices choices, string formKey) => Bring(batch, choices, formKey, _ => { });

    /// <summary>The same together with whatever <paramref name="also"/> does.</summary>
    internal ImportFinding Bring(ImportBatch batch, ImportChoices choices, string formKey, Action<SqliteConnection> also) => database.Write(c =>
    {
        if (c.ExecuteScalar<bool>(IsDoneSql, new { formKey }))
            return ImportFinding.None;
        var finding = Look(c, batch, choices);
        if (!finding.CanBeSaved)
            return finding;
        var now = clock.GetUtcNow();
        if (batch.Shop is { } shop)
        {
            c.Execute(AddShopSql, Values(shop));
            OpeningStore.AddWeek(c, shop.Opening.Week);
        }
        FormKeys.Once(c, formKey, now, () =>
        {
            ImportRowStore.Add(c, batch, now);
            return batch.Count;
        });
        also(c);
        return finding;
    });

    private const string AddShopSql = """
        INSERT INTO shop (id, name, phone, mail, street, town, country, opening_hours, home_markdown, language, time_zone, currency, tension_unit)
        VALUES (1, @Name, @Phone, @Mail, @Street, @Town, @Country, @OpeningHours, @HomeMarkdown, @Language, @TimeZone, @Currency, @TensionUnit)
        """;

    private static object Values(ShopDetails shop) => new
    {
        shop.Name,
        shop.Phone,
        shop.Mail,
        shop.Street,
        shop.Town,
        shop.Country,
        shop.OpeningHours,
        shop.HomeMarkdown,
        shop.Language,
        shop.TimeZone,
        shop.Currency,
        TensionUnit = shop.TensionUnit.ToString(),
    };

    private static ImportFinding Look(SqliteConnection connection, ImportBatch batch, ImportChoices choices)
    {
        var matches = LookalikeStore.Find(connection, batch);
        var undecided = ImportDecisions.Apply(matches, choices);
        return new ImportFinding(matches, undecided, undecided.Count > 0 ? [] : OnFileStore.Mark(connection, batch));
    }
}
