using System.Text.Json;
using Dapper;
using TagPage.Records.Audit;
using TagPage.Records.Storage;

namespace TagPage.Records.StringingLists;

/// <summary>Lists of stringings: taken for the background, and looked at. Only the owner brings them in.</summary>
public sealed class StringingListStore(Database database, TimeProvider clock)
{
    /// <summary>Done carries the list's number. Its lines are written in the background.</summary>
    public Outcome Begin(Who who, StringingListEntry entry) => database.WriteOnceAsOwner(who, entry.FormKey, clock.GetUtcNow(), c =>
    {
        var id = c.ExecuteScalar<long>(AddSql, new { entry.Name, Lines = entry.Lines.Count, entry.Noted, entry.There, entry.Refused, Now = clock.GetUtcNow() });
        c.Execute(AddRowSql, entry.Lines.Select((line, position) => new { id, line.Household, position, Line = JsonSerializer.Serialize(line) }));
        c.Execute(RememberSql, new { entry.Headings, entry.Settings, Now = clock.GetUtcNow() });
        AuditStore.Note(c, AuditEvent.ListBroughtIn, $"list {id}: {entry.Lines.Count} lines", clock.GetUtcNow(), who.Account ?? "");
        return new Outcome.Done(id);
    });

    private const string AddSql = """
        INSERT INTO stringing_list (name, state, lines, noted, there, refused, made_at)
        VALUES (@Name, 'Coming', @Lines, @Noted, @There, @Refused, @Now)
        RETURNING id
        """;

    private const string AddRowSql = "INSERT INTO stringing_list_row (list_id, household, position, line) VALUES (@id, @Household, @position, @Line)";

    private const string RememberSql = """
        INSERT INTO stringing_list_heading (headings, settings, used_at)
        VALUES (@Headings, @Settings, @Now)
        ON CONFLICT (headings) DO UPDATE SET settings = excluded.settings, used_at = excluded.used_at
        """;

    /// <summary>The list that a form made which was sent before; null for none.</summary>
    public long? Made(string formKey) => database.Read(c => FormKeys.Made(c, Who.Shop, formKey));

    /// <summary>What was said about a list with these headings, as JSON; null for none.</summary>
    public string? Remembered(string headings) => database.Read(c => c.ExecuteScalar<string?>("SELECT settings FROM stringing_list_heading WHERE headings = @headings", new { headings }));

    public StringingListRow? Get(long id) => database.Read(c => c.QuerySingleOrDefault<StringingListRow>($"{RowSql} WHERE l.id = @id", new { id }));

    /// <summary>The newest first.</summary>
    public IReadOnlyList<StringingListRow> List() => database.Read(c => c.Query<StringingListRow>($"{RowSql} ORDER BY l.id DESC LIMIT 20").ToList());

    private const string RowSql = """
        SELECT l.id, l.name, l.state, l.lines, l.noted, l.there, l.refused, l.missed, l.made_at,
               (SELECT COUNT(*) FROM stringing_list_row r WHERE r.list_id = l.id) AS waiting,
               (SELECT COUNT(*) FROM stringing_list_record m WHERE m.list_id = l.id AND m.kind = 'job') AS jobs
        FROM stringing_list l
        """;

    /// <summary>The oldest list that is coming in or leaving; null for none.</summary>
    internal (long Id, StringingListState State)? AtWork() => database.Read(c => c.QueryFirstOrDefault<(long Id, StringingListState State)?>(AtWorkSql));

    private const string AtWorkSql = "SELECT id, state FROM stringing_list WHERE state IN ('Coming', 'Leaving') ORDER BY id LIMIT 1";
}
