using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>
/// The one-time link that sets up an empty shop. Only its hash is kept; each start makes a new link and voids the
/// older ones.
/// </summary>
public sealed class SetUpStore(Database database, TimeProvider clock)
{
    /// <summary>A new token, or null if there is already an account.</summary>
    public string? NewToken() => database.Write(c => AccountStore.Any(c) ? null : OneTimeLinkStore.New(c, clock.GetUtcNow()));

    public bool IsOpen(string token) => database.Read(c => IsOpen(c, token));

    private bool IsOpen(SqliteConnection connection, string token) =>
        !AccountStore.Any(connection) && OneTimeLinkStore.IsOpen(connection, token, clock.GetUtcNow());

    /// <summary>The shop and its owner in one transaction; absent where the link is used, too old or wrong.</summary>
    public Outcome SetUp(string token, SetUpEntry input, Account owner) => database.Write<Outcome>(c =>
    {
        if (!IsOpen(c, token))
            return new Outcome.Absent();
        c.Execute(ShopSql, new { input.ShopName, input.Country, input.TimeZone, input.Currency, TensionUnit = input.TensionUnit.ToString() });
        AccountStore.Insert(c, owner, clock.GetUtcNow());
        OneTimeLinkStore.Use(c, token, clock.GetUtcNow());
        return new Outcome.Done(1);
    });

    // A shop that was imported before it had an owner keeps what the form does not ask for.
    private const string ShopSql = """
        INSERT INTO shop (id, name, country, time_zone, currency, tension_unit)
        VALUES (1, @ShopName, @Country, @TimeZone, @Currency, @TensionUnit)
        ON CONFLICT (id) DO UPDATE
        SET name = @ShopName, country = @Country, time_zone = @TimeZone, currency = @Currency,
            tension_unit = @TensionUnit, version = version + 1
        """;
}
