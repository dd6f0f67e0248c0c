using Dapper;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Clients;

/// <summary>Those who pay instead of the client: academies, grandparents. The shop alone writes them.</summary>
public sealed class PayerStore(Database database, ShopStore shops, TimeProvider clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public string Note { get; init; } = "";
        public int Version { get; init; }
        public int Clients { get; init; }
    }

    public IReadOnlyList<Row> List() => database.Read(c => c.Query<Row>(ListSql).ToList());

    private const string ListSql = """
        SELECT p.id, p.name, p.phone, p.mail, p.note, p.version,
               (SELECT COUNT(*) FROM client c WHERE c.payer_id = p.id) AS clients
        FROM payer p
        ORDER BY p.name_key, p.id
        """;

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = """
        SELECT p.id, p.name, p.phone, p.mail, p.note, p.version,
               (SELECT COUNT(*) FROM client c WHERE c.payer_id = p.id) AS clients
        FROM payer p
        WHERE p.id = @id
        """;

    public Outcome Add(Who who, PayerEntry input) => database.WriteOnceAsOwner(who, input.FormKey, clock.GetUtcNow(), c =>
        new Outcome.Done(c.ExecuteScalar<long>(AddSql, Values(0, input))));

    private const string AddSql = """
        INSERT INTO payer (name, phone, mail, note)
        VALUES (@Name, @Phone, @Mail, @Note)
        RETURNING id
        """;

    public Outcome Change(Who who, long id, PayerEntry input) => database.WriteAsOwner(who, c =>
    {
        if (c.QuerySingleOrDefault<Row>(GetSql, new { id }) is null)
            return new Outcome.Absent();
        return c.Execute(ChangeSql, Values(id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE payer
        SET name = @Name, phone = @Phone, mail = @Mail, note = @Note, version = version + 1
        WHERE id = @Id AND version = @Version
        """;

    private object Values(long id, PayerEntry input) => new
    {
        Id = id,
        input.Version,
        input.Name,
        Phone = Phones.Read(input.Phone, shops.Get().Country),
        input.Mail,
        Note = input.Note ?? "",
    };
}
