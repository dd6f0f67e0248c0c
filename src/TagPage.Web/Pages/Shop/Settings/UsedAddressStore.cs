using Dapper;
using TagPage.Web.Data;
using TagPage.Web.Hosting;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>Remembers every address that was set, because labels out there may carry it.</summary>
public sealed class UsedAddressStore(Database database, PublicAddress address, TimeProvider clock)
{
    public sealed record Row
    {
        public string Base { get; init; } = "";

        /// <summary>The first and the last start with it.</summary>
        public DateTimeOffset FirstAt { get; init; }
        public DateTimeOffset LastAt { get; init; }
    }

    /// <summary>At a start: notes the address, if one is set.</summary>
    public void Note()
    {
        if (address.IsConfigured)
            database.Write(c => c.Execute(NoteSql, new { address.Base, Now = clock.GetUtcNow() }));
    }

    private const string NoteSql = """
        INSERT INTO used_address (base, first_at, last_at) VALUES (@Base, @Now, @Now)
        ON CONFLICT (base) DO UPDATE SET last_at = @Now
        """;

    /// <summary>Those before the present one, the latest first.</summary>
    public IReadOnlyList<Row> Earlier() => database.Read(c => c.Query<Row>(EarlierSql, new { address.Base }).AsList());

    private const string EarlierSql = "SELECT base, first_at, last_at FROM used_address WHERE base <> @Base ORDER BY last_at DESC, base";
}
