using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Sports;

namespace TagPage.Records.Import;

/// <summary>
/// Finds what the shop has already of the rows of a batch, once it is decided who the clients are: the same files sent
/// again add nothing. What looks the same and is not clashes.
/// </summary>
internal static class OnFileStore
{
    public static List<ImportClash> Mark(SqliteConnection connection, ImportBatch batch)
    {
        var clashes = new List<ImportClash>();
        MarkPlayers(connection, batch);
        MarkRackets(connection, batch, clashes);
        MarkJobs(connection, batch, clashes);
        MarkTags(connection, batch, clashes);
        OnFileMeasured.Mark(connection, batch);
        MarkStrings(connection, batch, clashes);
        MarkFrames(connection, batch);
        return clashes;
    }

    /// <summary>A player or racket that lines may mean; of a line or on file.</summary>
    private sealed record Candidate(ImportRow? Line, long Id, string Name, Sport Sport = default)
    {
        /// <summary>Lines of the owners under which it was meant: within one owner, two lines are two records.</summary>
        public HashSet<int> Owners { get; } = [];

        public void Is(ImportRow row)
        {
            if (Line is null)
                (row.Id, row.IsOnFile) = (Id, true);
            else
                row.SameAs = Line;
        }
    }

    private static void MarkPlayers(SqliteConnection connection, ImportBatch batch)
    {
        var known = connection.Query<(long Id, long ClientId, string Name)>(PlayersSql, Ids(batch.Clients.Rows))
            .GroupBy(p => ImportRow.MarkOf(p.ClientId)).ToDictionary(g => g.Key, g => g.Select(p => new Candidate(null, p.Id, NameKey.Of(p.Name))).ToList());
        foreach (var player in batch.Players.Rows)
        {
            var (owner, name) = (player.Client!, NameKey.Of(player.Name));
            if (!known.TryGetValue(owner.Mark, out var others))
                known[owner.Mark] = others = [];
            if (others.Find(o => o.Name == name && !o.Owners.Contains(owner.Line)) is { } same)
                same.Is(player);
            else
                others.Add(same = new Candidate(player, 0, name));
            same.Owners.Add(owner.Line);
        }
    }

    private const string PlayersSql = "SELECT id, client_id, name FROM player WHERE client_id IN (SELECT value FROM json_each(@ids)) ORDER BY id";

    private static void MarkRackets(SqliteConnection connection, ImportBatch batch, List<ImportClash> clashes)
    {
        var known = connection.Query<(long Id, long PlayerId, int Number, Sport Sport, string Frame)>(RacketsSql, Ids(batch.Players.Rows))
            .ToDictionary(r => $"{ImportRow.MarkOf(r.PlayerId)}, {r.Number}", r => new Candidate(null, r.Id, NameKey.Of(r.Frame), r.Sport));
        foreach (var racket in batch.Rackets.Rows)
        {
            var (place, frame) = ($"{racket.Player!.Mark}, {racket.Number}", NameKey.Of(racket.Frame));
            if (!known.TryGetValue(place, out var same))
                known[place] = new Candidate(racket, 0, frame, racket.Sport);
            else if (same.Sport == racket.Sport && (same.Name == frame || same.Name.Length == 0 || frame.Length == 0))
                same.Is(racket);
            else
                clashes.Add(new ImportClash.Number(racket));
        }
    }

    private const string RacketsSql = """
        SELECT id, player_id, number, sport, frame FROM racket WHERE player_id IN (SELECT value FROM json_each(@ids))
        """;

    private static void MarkJobs(SqliteConnection connection, ImportBatch batch, List<ImportClash> clashes)
    {
        var known = connection.Query<(int Ticket, long Id, long RacketId, DateOnly ReceivedOn, DateOnly? StrungOn)>(JobsSql, Values(batch.Jobs.Select(j => j.Ticket)))
            .ToDictionary(j => j.Ticket);
        foreach (var job in batch.Jobs)
        {
            if (!known.TryGetValue(job.Ticket, out var other))
                continue;
            var sameDay = other.ReceivedOn == job.ReceivedOn || (job.StrungOn is { } strung && other.StrungOn == strung);
            if (job.Racket!.IsOnFile && job.RacketId == other.RacketId && sameDay)
                (job.Id, job.IsOnFile) = (other.Id, true);
            else
                clashes.Add(new ImportClash.Ticket(job));
        }
    }

    private const string JobsSql = "SELECT ticket, id, racket_id, received_on, strung_on FROM job WHERE ticket IN (SELECT value FROM json_each(@values))";

    private static void MarkTags(SqliteConnection connection, ImportBatch batch, List<ImportClash> clashes)
    {
        var known = connection.Query<(string Code, long? RacketId)>(TagsSql, Values(batch.Tags.Select(t => t.Code.ToString()))).ToDictionary(t => t.Code, t => t.RacketId);
        var live = connection.Query<long>(LiveSql, Ids(batch.Rackets.Rows)).Select(ImportRow.MarkOf).ToHashSet();
        foreach (var racket in batch.Rackets.Rows)
            foreach (var tag in racket.Tags)
            {
                if (!known.TryGetValue(tag.Code.ToString(), out var other))
                {
                    if (tag.IsLive && !live.Add(racket.Mark))
                        clashes.Add(new ImportClash.LiveTag(tag));
                }
                else if (racket.IsOnFile && other == racket.Id)
                    tag.IsOnFile = true;
                else
                    clashes.Add(new ImportClash.Tag(tag));
            }
    }

    private const string TagsSql = "SELECT code, racket_id FROM tag WHERE code IN (SELECT value FROM json_each(@values))";

    private const string LiveSql = "SELECT racket_id FROM tag WHERE state = 'Live' AND racket_id IN (SELECT value FROM json_each(@ids))";

    private static void MarkStrings(SqliteConnection connection, ImportBatch batch, List<ImportClash> clashes)
    {
        var catalogue = ImportRowStore.Catalogue(connection);
        foreach (var row in batch.Strings.Rows)
        {
            if (!catalogue.TryGetValue(ImportRowStore.StringKey(row.Name, row.GaugeMm), out var known))
                continue;
            (row.Id, row.IsOnFile) = (known.Id, true);
            if (known.Material != row.Material)
                clashes.Add(new ImportClash.Material(row));
        }
    }

    // A frame that the shop knows stays as it is.
    private static void MarkFrames(SqliteConnection connection, ImportBatch batch)
    {
        var known = connection.Query<(Sport Sport, string Key)>(FramesSql).ToHashSet();
        foreach (var frame in batch.Frames)
            frame.IsOnFile = known.Contains((frame.Sport, frame.Key));
    }

    private const string FramesSql = "SELECT sport, name_key FROM frame";

    internal static object Ids(IEnumerable<ImportRow> rows) => new { ids = JsonSerializer.Serialize(rows.Where(r => r.IsOnFile).Select(r => r.Id).Distinct()) };

    private static object Values<T>(IEnumerable<T> values) => new { values = JsonSerializer.Serialize(values) };
}
