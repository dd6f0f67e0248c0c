using Dapper;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Core.Tags;
using TagPage.Records.DueDates;
using TagPage.Records.Search;
using TagPage.Records.Storage;

namespace TagPage.UnderFire;

/// <summary>A shop with rackets enough that no finder's limit is reached.</summary>
internal static class Battlefield
{
    public const int Rackets = 400;

    public static void SetUp(DataFolder folder)
    {
        using var database = Open(folder);
        database.Write(c =>
        {
            c.Execute(ShopSql);
            for (var n = 1; n <= Rackets; n++)
                c.Execute(RacketSql, new { n, Code = CodeOf(n).ToString() });
        });
    }

    /// <summary>As the program opens it.</summary>
    public static Database Open(DataFolder folder)
    {
        RecordsFile.Judge(folder, Migration.Embedded);
        var database = new Database(folder);
        new Migrator(database, folder, TimeProvider.System, Migration.Embedded, NullLogger<Migrator>.Instance).Run();
        new NameKeeper(database).Attach();
        new DueDateKeeper(database, TimeProvider.System).Attach();
        return database;
    }

    /// <summary>The same for the one who sets up and for the one who writes.</summary>
    public static TagCode CodeOf(int n)
    {
        var random = new Random(n);
        return TagCode.Draw(bytes => random.NextBytes(bytes));
    }

    private const string ShopSql = """
        INSERT INTO shop (id, name, mail, country, time_zone, currency, tension_unit) VALUES (1, 'Ferrygate Racket Bench', 'bench@ferrygate.example', 'GB', 'Etc/UTC', 'GBP', 'Lb');
        INSERT INTO string_kind (name, material, gauge_mm) VALUES ('Heron Spin', 'Polyester', 1.25);
        """;

    private const string RacketSql = """
        INSERT INTO client (name, mail, found_choice, found_choice_on) VALUES ('Client ' || @n, 'client' || @n || '@street.example', 'Message', '2026-11-01');
        INSERT INTO player (client_id, name, junior) VALUES (@n, 'Player ' || @n, 0);
        INSERT INTO racket (player_id, number, state, sport, frame) VALUES (@n, 1, 'InTurn', 'Tennis', 'Pellmore Meadow 98');
        INSERT INTO tag (code, state, racket_id, made_at, linked_at) VALUES (@Code, 'Live', @n, '2026-11-01T00:00:00.000Z', '2026-11-01T00:00:00.000Z');
        """;
}
