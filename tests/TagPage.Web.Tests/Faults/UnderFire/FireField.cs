using Dapper;
using TagPage.Core.Tags;
using TagPage.Records.DueDates;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Search;
using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Faults.UnderFire;

/// <summary>
/// A shop with households enough that no limit is reached. The first ones are due and get a reminder each; the others’ rackets are found,
/// played with, brought and paid for.
/// </summary>
internal static class FireField
{
    public const int Households = 1500;

    /// <summary>Every so many households has an address that the mail server knows nobody at.</summary>
    public const int NobodyEach = 11;

    public static string MailOf(long client) => $"client{client}@street.example";

    public static bool HasNobody(long client) => client % NobodyEach == 0;

    public static TagCode CodeOf(long n)
    {
        var random = new Random((int)n);
        return TagCode.Draw(random.NextBytes);
    }

    /// <summary>Into the records that setting up has made.</summary>
    /// <param name="folder">The program on it is not running.</param>
    /// <param name="due">How many households are due.</param>
    public static void Fill(DataFolder folder, int due)
    {
        using var database = Open(folder);
        database.Write(c =>
        {
            c.Execute(ShopSql);
            c.Execute(RacketsSql, new { Households, due });
            for (var n = 1L; n <= Households; n++)
                c.Execute(TagSql, new { n, Code = CodeOf(n).ToString() });
        });
    }

    /// <summary>The path of a new private link to a client’s own page.</summary>
    public static string OwnPage(DataFolder folder, long client)
    {
        using var database = Open(folder);
        var keys = new LinkTokens(folder);
        var store = new OwnPageLinkStore(database, keys, null!, null!, TimeProvider.System);
        var link = Assert.IsType<Outcome.Done>(store.Make(Who.Shop, client)).Id;
        return "/my/" + keys.Token(LinkPurpose.OwnPage, link, store.Get(link)!.Secret);
    }

    /// <summary>As the program opens it.</summary>
    public static Database Open(DataFolder folder)
    {
        var database = new Database(folder);
        new NameKeeper(database).Attach();
        new DueDateKeeper(database, TimeProvider.System).Attach();
        return database;
    }

    private const string ShopSql = """
        UPDATE shop SET mail = 'bench@ferrygate.example', quiet_from_hour = 0, quiet_until_hour = 0;
        INSERT INTO string_kind (id, name, material, gauge_mm) VALUES (1, 'Heron Spin', 'Polyester', 1.25);
        """;

    private const string RacketsSql = """
        CREATE TEMP TABLE n (n INTEGER PRIMARY KEY);
        WITH RECURSIVE up(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM up WHERE n < @Households) INSERT INTO n SELECT n FROM up;
        INSERT INTO client (id, name, mail, found_choice, found_choice_on) SELECT n, 'Client ' || n, 'client' || n || '@street.example', 'Message', '2026-11-01' FROM n;
        INSERT INTO player (id, client_id, name, junior) SELECT n, n, 'Player ' || n, 0 FROM n;
        INSERT INTO racket (id, player_id, number, state, sport, frame, pattern_mains, pattern_crosses, lost_since)
        SELECT n, n, 1, 'InTurn', 'Tennis', 'Pellmore Meadow 98', 16, 19, CASE WHEN n > @due THEN '2026-11-01' END FROM n;
        INSERT INTO job (ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension,
                         tension_unit, received_on, strung_on, strung_by, collected_on, price_minor, note)
        SELECT 1000 + n, n, 'Collected', 1, 1, 'Shop', 'Shop', 52, 50, 'Lb', '2026-08-01', '2026-08-01', 'Runa', '2026-08-01', 2450, '' FROM n;
        INSERT INTO charge (job_id, kind, amount_minor) SELECT id, 'Whole', price_minor FROM job;
        UPDATE racket SET own_date = CASE WHEN id <= @due THEN '2026-11-20' ELSE '2099-01-01' END;
        DROP TABLE n;
        """;

    private const string TagSql = "INSERT INTO tag (code, state, racket_id, made_at, linked_at) VALUES (@Code, 'Live', @n, '2026-11-01T00:00:00.000Z', '2026-11-01T00:00:00.000Z')";
}
