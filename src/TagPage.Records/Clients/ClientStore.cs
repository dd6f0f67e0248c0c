using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Text;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Clients;

/// <summary>The people who are contacted; for a junior, the guardian.</summary>
public sealed class ClientStore(Database database, ShopStore shops, ShopClock clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public string Language { get; init; } = "en";
        public long? PayerId { get; init; }
        public bool Reminders { get; init; }
        public string Note { get; init; } = "";
        public FoundChoice FoundChoice { get; init; }
        public bool FoundShowsMail { get; init; }
        public int Version { get; init; }
    }

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = """
        SELECT id, name, phone, mail, language, payer_id, reminders, note, found_choice, found_shows_mail, version
        FROM client
        WHERE id = @id
        """;

    public IReadOnlyList<(long Id, string Name)> Payers() => database.Read(c => c.Query<(long, string)>(PayersSql).ToList());

    private const string PayersSql = "SELECT id, name FROM payer ORDER BY name_key, id";

    /// <summary>Who on file is reached the same way.</summary>
    /// <param name="formKey">A form that made its record is not asked about that very record.</param>
    /// <param name="phone">As typed, or null.</param>
    /// <param name="mail">As typed, or null.</param>
    public IReadOnlyList<Oddity> ReachedLike(string formKey, string? phone, string? mail)
    {
        var (byPhone, byMail) = database.Read(c => c.QuerySingle<(string?, string?)>(SameReachSql,
            new { FormKey = formKey, Phone = ReadPhone(phone), Mail = mail }));
        Oddity?[] same = [byPhone is null ? null : new PhoneOnFile(byPhone), byMail is null ? null : new MailOnFile(byMail)];
        return [.. same.OfType<Oddity>()];
    }

    private const string SameReachSql = """
        SELECT (SELECT name FROM client WHERE phone = @Phone AND sent.made_id IS NULL ORDER BY id LIMIT 1),
               (SELECT name FROM client WHERE mail = @Mail COLLATE NOCASE AND sent.made_id IS NULL ORDER BY id LIMIT 1)
        FROM (SELECT 1)
        LEFT JOIN used_form_key sent ON sent.form_key = @FormKey
        """;

    public Outcome Add(Who who, ClientEntry input) => database.WriteOnceAsShop(who, input.FormKey, clock.Now, c =>
        UnknownPayer(c, input) ?? (Outcome)new Outcome.Done(Insert(c, input)));

    /// <summary>For a write that makes more than the client; within its transaction.</summary>
    internal long Insert(SqliteConnection connection, ClientEntry input) => connection.ExecuteScalar<long>(AddSql, Values(0, input));

    private const string AddSql = """
        INSERT INTO client (name, phone, mail, language, payer_id, reminders, note)
        VALUES (@Name, @Phone, @Mail, @Language, @PayerId, @Reminders, @Note)
        RETURNING id
        """;

    /// <summary>The whole record, which is the shop's to write: payer and note are nobody else's business.</summary>
    public Outcome Change(Who who, long id, ClientEntry input) => database.Write<Outcome>(c =>
    {
        if (!c.ExecuteScalar<bool>("SELECT @IsShop AND EXISTS (SELECT 1 FROM client WHERE id = @id)", new { who.IsShop, id }))
            return new Outcome.Absent();
        if (UnknownPayer(c, input) is { } unknown)
            return unknown;
        return c.Execute(ChangeSql, Values(id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    // What finders were shown of a changed number or address ends with it: see the trigger client_contact_changed.
    private const string ChangeSql = $"""
        UPDATE client
        SET name = @Name, phone = @Phone, mail = @Mail, language = @Language, payer_id = @PayerId, {SetsReminders}, note = @Note,
            version = version + 1
        WHERE id = @Id AND version = @Version
        """;

    /// <summary>Whoever says so, the day is kept since when reminders are wanted or not.</summary>
    internal const string SetsReminders = """
        reminders_changed_on = CASE WHEN reminders = @Reminders THEN reminders_changed_on ELSE @Today END, reminders = @Reminders
        """;

    private static Outcome.Refused? UnknownPayer(SqliteConnection connection, ClientEntry input) =>
        input.PayerId is null || connection.ExecuteScalar<bool>(HasPayerSql, new { input.PayerId })
            ? null
            : new Outcome.Refused(new PayerUnknown());

    private const string HasPayerSql = "SELECT EXISTS (SELECT 1 FROM payer WHERE id = @PayerId)";

    private object Values(long id, ClientEntry input) => new
    {
        Id = id,
        input.Version,
        Name = PersonName.Kept(input.Name),
        Phone = ReadPhone(input.Phone),
        input.Mail,
        input.Language,
        input.PayerId,
        input.Reminders,
        Note = input.Note ?? "",
        clock.Today,
    };

    private string? ReadPhone(string? typed) => Phones.Read(typed, shops.Get().Country);
}
