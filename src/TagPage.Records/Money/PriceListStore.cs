using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Money;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>The shop's price list, and what its bills need.</summary>
public sealed class PriceListStore(Database database)
{
    public PriceList Get() => database.Read(Get);

    internal static PriceList Get(SqliteConnection connection) => (connection.QuerySingleOrDefault<PriceList>(GetSql) ?? new PriceList()) with
    {
        Strings = connection.Query<StringRow>(StringsSql).ToDictionary(row => row.StringId, row => new StringPrice(row.SetMinor, row.MetreMinor)),
        Extras = connection.Query<ExtraPrice>(ExtrasSql).AsList(),
    };

    private const string GetSql = """
        SELECT labour_minor, tennis_minor, badminton_minor, squash_minor, tax_bp, tax_number, iban, account_name, version FROM money_setting WHERE id = 1
        """;

    private sealed record StringRow
    {
        public long StringId { get; init; }
        public long? SetMinor { get; init; }
        public long? MetreMinor { get; init; }
    }

    private const string StringsSql = "SELECT string_id, set_minor, metre_minor FROM string_price";

    private const string ExtrasSql = "SELECT id, kind, name, amount_minor FROM extra_price ORDER BY kind = 'Extra', id";

    /// <summary>Prices of jobs that are there stay as they are.</summary>
    public Outcome Save(Who who, PriceList list) => database.WriteAsOwner(who, c =>
    {
        if (c.Execute(SaveSql, list) != 1)
            return Outcome.Stale;
        c.Execute("DELETE FROM string_price");
        c.Execute(StringSql, list.Strings.Select(price => new { Id = price.Key, price.Value.SetMinor, price.Value.MetreMinor }));
        c.Execute("DELETE FROM extra_price");
        var numbers = new HashSet<long> { 0 };
        foreach (var extra in list.Extras)
            c.Execute(ExtraSql, new { Id = numbers.Add(extra.Id) ? extra.Id : (long?)null, Kind = extra.Kind.ToString(), extra.Name, extra.AmountMinor });
        return new Outcome.Done(1);
    });

    // The first save makes the row; after that only the version it was read under may be replaced.
    private const string SaveSql = """
        INSERT INTO money_setting (id, labour_minor, tennis_minor, badminton_minor, squash_minor, tax_bp, tax_number, iban, account_name)
        VALUES (1, @LabourMinor, @TennisMinor, @BadmintonMinor, @SquashMinor, @TaxBp, @TaxNumber, @Iban, @AccountName)
        ON CONFLICT (id) DO UPDATE
        SET labour_minor = @LabourMinor, tennis_minor = @TennisMinor, badminton_minor = @BadmintonMinor, squash_minor = @SquashMinor, tax_bp = @TaxBp,
            tax_number = @TaxNumber, iban = @Iban, account_name = @AccountName, version = version + 1
        WHERE version = @Version
        """;

    private const string StringSql = """
        INSERT INTO string_price (string_id, set_minor, metre_minor) SELECT id, @SetMinor, @MetreMinor FROM string_kind WHERE id = @Id
        """;

    private const string ExtraSql = "INSERT INTO extra_price (id, kind, name, amount_minor) VALUES (@Id, @Kind, @Name, @AmountMinor)";
}
