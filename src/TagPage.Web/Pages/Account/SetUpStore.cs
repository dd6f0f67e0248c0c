using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;

namespace TagPage.Web.Pages.Account;

/// <summary>
/// The one-time link that sets up an empty shop. Only its hash is kept; a new start makes a new link and the older
/// ones are worth nothing.
/// </summary>
public sealed class SetUpStore(Database database, TimeProvider clock)
{
    /// <summary>A new token, or null where there is an account already.</summary>
    public string? NewToken() => database.Write(c =>
    {
        if (AccountStore.Any(c))
            return null;
        c.Execute(ForgetSql);
        var token = LinkToken.Draw();
        c.Execute(NewTokenSql, new { Hash = LinkToken.Hash(token), Expires = clock.GetUtcNow() + LinkToken.Lifetime });
        return token;
    });

    private const string ForgetSql = "DELETE FROM setup_link";

    private const string NewTokenSql = "INSERT INTO setup_link (token_hash, expires_at) VALUES (@Hash, @Expires)";

    public bool IsOpen(string token) => database.Read(c => IsOpen(c, token));

    private bool IsOpen(SqliteConnection connection, string token) =>
        connection.ExecuteScalar<bool>(IsOpenSql, new { Hash = LinkToken.Hash(token), Now = clock.GetUtcNow() });

    private const string IsOpenSql = """
        SELECT EXISTS (SELECT 1 FROM setup_link
                       WHERE token_hash = @Hash AND used_at IS NULL AND expires_at > @Now
                         AND NOT EXISTS (SELECT 1 FROM account))
        """;

    /// <summary>The shop and its owner in one transaction; absent where the link is used, too old or wrong.</summary>
    public Outcome SetUp(string token, SetUpInput input, Account owner) => database.Write<Outcome>(c =>
    {
        if (!IsOpen(c, token))
            return new Outcome.Absent();
        c.Execute(ShopSql, new { input.ShopName, input.Country, input.TimeZone, input.Currency, TensionUnit = input.TensionUnit.ToString() });
        AccountStore.Insert(c, owner, clock.GetUtcNow());
        c.Execute(UsedSql, new { Hash = LinkToken.Hash(token), Now = clock.GetUtcNow() });
        return new Outcome.Done(1);
    });

    // A shop that was imported before its owner came keeps what the form does not ask for.
    private const string ShopSql = """
        INSERT INTO shop (id, name, country, time_zone, currency, tension_unit)
        VALUES (1, @ShopName, @Country, @TimeZone, @Currency, @TensionUnit)
        ON CONFLICT (id) DO UPDATE
        SET name = @ShopName, country = @Country, time_zone = @TimeZone, currency = @Currency,
            tension_unit = @TensionUnit, version = version + 1
        """;

    private const string UsedSql = "UPDATE setup_link SET used_at = @Now WHERE token_hash = @Hash";
}
