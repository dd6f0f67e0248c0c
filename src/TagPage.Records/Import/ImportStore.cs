using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Import;

/// <summary>Saves what was read, all of it or nothing.</summary>
public sealed class ImportStore(Database database, TimeProvider clock)
{
    /// <summary>What in the batch the shop already has.</summary>
    public IReadOnlyList<ImportClash> Clashes(ImportBatch batch) => database.Read(c => Clashes(c, batch));

    public bool IsDone(string formKey) => database.Read(c => c.ExecuteScalar<bool>(IsDoneSql, new { formKey }));

    private const string IsDoneSql = "SELECT EXISTS (SELECT 1 FROM used_form_key WHERE form_key = @formKey)";

    /// <summary>
    /// Saves a batch without problems in one transaction, once per form key. Returns what the shop already has; if
    /// that is not empty, nothing was saved.
    /// </summary>
    public IReadOnlyList<ImportClash> Add(ImportBatch batch, string formKey) => Bring(batch, formKey, _ => { });

    /// <summary>The same together with whatever <paramref name="also"/> does.</summary>
    internal IReadOnlyList<ImportClash> Bring(ImportBatch batch, string formKey, Action<SqliteConnection> also) => database.Write(c =>
    {
        if (c.ExecuteScalar<bool>(IsDoneSql, new { formKey }))
            return [];
        var clashes = Clashes(c, batch);
        if (clashes.Count > 0)
            return clashes;
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
        return clashes;
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

    private static List<ImportClash> Clashes(SqliteConnection connection, ImportBatch batch)
    {
        var clashes = new List<ImportClash>();
        var tickets = Known<int>(connection, TicketsSql, batch.Jobs.Select(j => j.Ticket));
        clashes.AddRange(batch.Jobs.Where(j => tickets.Contains(j.Ticket)).Select(j => new ImportClash.Ticket(j)));
        var codes = Known<string>(connection, CodesSql, batch.Tags.Select(t => t.Code.ToString()));
        clashes.AddRange(batch.Tags.Where(t => codes.Contains(t.Code.ToString())).Select(t => new ImportClash.Tag(t)));
        clashes.AddRange(OtherMaterials(connection, batch));
        return clashes;
    }

    private static HashSet<T> Known<T>(SqliteConnection connection, string sql, IEnumerable<T> values) =>
        connection.Query<T>(sql, new { values = JsonSerializer.Serialize(values) }).ToHashSet();

    private const string TicketsSql = "SELECT ticket FROM job WHERE ticket IN (SELECT value FROM json_each(@values))";

    private const string CodesSql = "SELECT code FROM tag WHERE code IN (SELECT value FROM json_each(@values))";

    private static IEnumerable<ImportClash> OtherMaterials(SqliteConnection connection, ImportBatch batch)
    {
        var catalogue = ImportRowStore.Catalogue(connection);
        return batch.Strings.Rows
            .Where(s => catalogue.TryGetValue(ImportRowStore.StringKey(s.Name, s.GaugeMm), out var known) && known.Material != s.Material)
            .Select(s => new ImportClash.Material(s));
    }
}
