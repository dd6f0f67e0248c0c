using System.Diagnostics;
using System.Security.Cryptography;
using Dapper;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using TagPage.Core.Tags;
using TagPage.Records.DueDates;
using TagPage.Records.Search;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Start;

namespace TagPage.Bench;

/// <summary>
/// An invented shop of any size in a folder of its own: two rackets a player, three players to two clients, three
/// stringings a racket over the last year and a half, one live tag a racket.
/// </summary>
public sealed class BigShop : IDisposable
{
    public string Folder { get; } = Path.Combine(Path.GetTempPath(), "tagpage-bench-" + Guid.NewGuid().ToString("N"));

    private readonly WebApplication _app;

    public BigShop(int rackets)
    {
        _app = App.CreateBuilder([$"--TagPage:DataFolder={Folder}"]).Build();
        Get<Migrator>().Run();
        Get<NameKeeper>().Attach();
        Get<DueDateKeeper>().Attach();
        Codes = [.. Enumerable.Range(0, rackets).Select(_ => TagCode.Draw(RandomNumberGenerator.Fill))];
        var today = Get<ShopClock>().Today;
        Get<Database>().Write(c =>
        {
            c.Execute(RecordsSql, new { rackets, players = rackets / 2, clients = rackets / 3, today });
            for (var i = 0; i < rackets; i++)
                c.Execute(TagSql, new { code = Codes[i], racket = i + 1, now = DateTimeOffset.UtcNow });
            // All dates at once are work for the background, as after a change of settings.
            c.Execute("UPDATE due_again SET in_background = 1");
        });
        var watch = Stopwatch.StartNew();
        Get<DueDateWorker>().Run();
        Console.WriteLine($"// {rackets} restring-by dates worked out in {watch.Elapsed.TotalSeconds:0.0} s");
    }

    /// <summary>That of racket n stands at n − 1.</summary>
    public IReadOnlyList<TagCode> Codes { get; }

    public IServiceProvider Services => _app.Services;

    public T Get<T>() where T : notnull => _app.Services.GetRequiredService<T>();

    /// <summary>Lets another process have the records.</summary>
    public void Close() => ((IDisposable)_app).Dispose();

    public void Dispose()
    {
        Close();
        Directory.Delete(Folder, recursive: true);
    }

    private const string TagSql = "INSERT INTO tag (code, state, racket_id, made_at, linked_at) VALUES (@code, 'Live', @racket, @now, @now)";

    private const string RecordsSql = """
        INSERT INTO shop (id, name, country, time_zone, currency, tension_unit) VALUES (1, 'Bench of benches', 'GB', 'Europe/London', 'GBP', 'Lb');
        INSERT INTO string_kind (id, name, material, gauge_mm) VALUES
          (1, 'Invented gut', 'NaturalGut', 1.30), (2, 'Invented multi', 'Multifilament', 1.30),
          (3, 'Invented synthetic', 'SyntheticGut', 1.30), (4, 'Invented poly', 'Polyester', 1.25);
        WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < @clients)
        INSERT INTO client (id, name, phone)
        SELECT i, 'Client ' || char(65 + i % 26, 97 + i / 26 % 26, 97 + i / 676 % 26) || ' ' || i, '+4477009' || printf('%05d', i % 100000) FROM n;
        WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < @players)
        INSERT INTO player (id, client_id, name, junior, times_a_week, hours_a_time)
        SELECT i, 1 + i % @clients, 'Player ' || char(65 + i % 26, 97 + i / 26 % 26, 97 + i / 676 % 26) || ' ' || i, i % 3 = 0, 1 + i % 4, 1.5 FROM n;
        WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < @rackets)
        INSERT INTO racket (id, player_id, number, state, sport, frame, pattern_mains, pattern_crosses)
        SELECT i, 1 + (i - 1) % @players, 1 + (i - 1) / @players, CASE WHEN i > @players THEN 'Spare' ELSE 'InTurn' END, 'Tennis', 'Invented frame', 16, 19 FROM n;
        WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 3 * @rackets)
        INSERT INTO job (id, ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension,
                         tension_unit, received_on, strung_on, collected_on, price_minor, paid_on)
        SELECT i, i, 1 + (i - 1) % @rackets, 'Collected', 1 + i % 4, 1 + i % 4, 'Shop', 'Shop', 52, 50, 'Lb',
               date(@today, '-' || (i * 7 % 170 + 180 * (2 - (i - 1) / @rackets)) || ' days'),
               date(@today, '-' || (i * 7 % 170 + 180 * (2 - (i - 1) / @rackets)) || ' days'),
               date(@today, '-' || (i * 7 % 170 + 180 * (2 - (i - 1) / @rackets)) || ' days'), 2450,
               date(@today, '-' || (i * 7 % 170 + 180 * (2 - (i - 1) / @rackets)) || ' days')
        FROM n;
        ANALYZE;
        """;
}
