using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Search;

/// <summary>Looks into the notes of clients, players, rackets and jobs.</summary>
public sealed class NoteSearchStore(Database database)
{
    /// <summary>If more match, there were too few words.</summary>
    public const int Most = 20;

    /// <summary>The newest records first: putting the best first would mean weighing every note with a common word.</summary>
    public IReadOnlyList<NoteRow> ByWords(string words) => database.Read(c => c.Query<NoteRow>(ByWordsSql, new { words, Most }).ToList());

    private const string ByWordsSql = """
        WITH hit AS MATERIALIZED (
          SELECT rowid AS key, snippet(search_note, 0, '', '', '…', 24) AS excerpt
          FROM search_note WHERE search_note MATCH @words ORDER BY rowid DESC LIMIT @Most),
        whose AS (
          SELECT h.key, h.excerpt, j.id AS job_id, j.ticket, j.racket_id, r.player_id, p.client_id
          FROM hit h JOIN job j ON j.id = h.key / 4 JOIN racket r ON r.id = j.racket_id JOIN player p ON p.id = r.player_id
          WHERE h.key % 4 = 3
          UNION ALL
          SELECT h.key, h.excerpt, NULL, NULL, r.id, p.id, p.client_id
          FROM hit h JOIN racket r ON r.id = h.key / 4 JOIN player p ON p.id = r.player_id
          WHERE h.key % 4 = 2
          UNION ALL
          SELECT h.key, h.excerpt, NULL, NULL, NULL, p.id, p.client_id
          FROM hit h JOIN player p ON p.id = h.key / 4
          WHERE h.key % 4 = 1
          UNION ALL
          SELECT h.key, h.excerpt, NULL, NULL, NULL, NULL, h.key / 4
          FROM hit h
          WHERE h.key % 4 = 0)
        SELECT w.excerpt, c.id AS client_id, c.name AS client, p.name AS player, r.id AS racket_id, r.number, w.job_id, w.ticket
        FROM whose w
        JOIN client c ON c.id = w.client_id
        LEFT JOIN player p ON p.id = w.player_id
        LEFT JOIN racket r ON r.id = w.racket_id
        ORDER BY w.key DESC
        """;
}
