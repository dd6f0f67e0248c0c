using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Csv;
using TagPage.Web.Data;

namespace TagPage.Web.Pages.Shop.Import;

/// <summary>Saves what was read, all of it or nothing.</summary>
public sealed class ImportStore(Database database, TimeProvider clock)
{
    /// <summary>What of the batch the shop has already.</summary>
    public IReadOnlyList<Problem> Clashes(ImportBatch batch) => database.Read(c => Clashes(c, batch));

    public bool IsDone(string formKey) => database.Read(c => c.ExecuteScalar<bool>(IsDoneSql, new { formKey }));

    private const string IsDoneSql = "SELECT EXISTS (SELECT 1 FROM submitted_form WHERE form_key = @formKey)";

    /// <summary>
    /// Saves a batch without problems in one transaction, once per form key, together with whatever
    /// <paramref name="also"/> does. Returns what the shop has already; where that is not empty, nothing was saved.
    /// </summary>
    public IReadOnlyList<Problem> Add(ImportBatch batch, string formKey, Action<SqliteConnection>? also = null) => database.Write(c =>
    {
        if (c.ExecuteScalar<bool>(IsDoneSql, new { formKey }))
            return [];
        var clashes = Clashes(c, batch);
        if (clashes.Count > 0)
            return clashes;
        var now = clock.GetUtcNow();
        if (batch.Shop is { } shop)
            c.Execute(AddShopSql, Values(shop));
        SubmittedForms.Once(c, formKey, now, () =>
        {
            ImportRowStore.Add(c, batch, now);
            return batch.Count;
        });
        also?.Invoke(c);
        return clashes;
    });

    private const string AddShopSql = """
        INSERT INTO shop (id, name, phone, mail, street, town, country, opening_hours, home_markdown, time_zone, currency, tension_unit)
        VALUES (1, @Name, @Phone, @Mail, @Street, @Town, @Country, @OpeningHours, @HomeMarkdown, @TimeZone, @Currency, @TensionUnit)
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
        shop.TimeZone,
        shop.Currency,
        TensionUnit = shop.TensionUnit.ToString(),
    };

    private static List<Problem> Clashes(SqliteConnection connection, ImportBatch batch)
    {
        var problems = new List<Problem>();
        var tickets = Known<int>(connection, TicketsSql, batch.Jobs.Select(j => j.Ticket));
        problems.AddRange(batch.Jobs.Where(j => tickets.Contains(j.Ticket)).Select(j =>
            new Problem(JobSheet.File, j.Line, JobColumns.Ticket.Name, $"The shop has a job with ticket {j.Ticket} already. Take this line out, or give it another number.")));
        var codes = Known<string>(connection, CodesSql, batch.Tags.Select(t => t.Code.ToString()));
        problems.AddRange(batch.Tags.Where(t => codes.Contains(t.Code.ToString())).Select(t =>
            new Problem(RacketSheet.File, t.Line, t.Column, $"The shop has the tag {t.Code.Display} already. Take it out here.")));
        problems.AddRange(OtherMaterials(connection, batch));
        return problems;
    }

    private static HashSet<T> Known<T>(SqliteConnection connection, string sql, IEnumerable<T> values) =>
        connection.Query<T>(sql, new { values = JsonSerializer.Serialize(values) }).ToHashSet();

    private const string TicketsSql = "SELECT ticket FROM job WHERE ticket IN (SELECT value FROM json_each(@values))";

    private const string CodesSql = "SELECT code FROM tag WHERE code IN (SELECT value FROM json_each(@values))";

    private static IEnumerable<Problem> OtherMaterials(SqliteConnection connection, ImportBatch batch)
    {
        var catalogue = ImportRowStore.Catalogue(connection);
        return batch.Strings.Rows
            .Where(s => catalogue.TryGetValue(ImportRowStore.StringKey(s.Name, s.GaugeMm), out var known) && known.Material != s.Material)
            .Select(s => new Problem(StringSheet.File, s.Line, StringSheet.Material.Name,
                "The shop has a string of this name and gauge in another material. Correct the material, or give this string another name."));
    }
}
