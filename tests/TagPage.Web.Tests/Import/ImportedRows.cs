using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Import;

/// <summary>The contents of the tables that an import fills.</summary>
internal static class ImportedRows
{
    public static readonly string[] Tables = ["client", "payer", "player", "string_kind", "racket", "tag", "spec", "frame_place", "added_mass", "job", "reading", "instrument"];

    public static string Count(Database database) => string.Join(' ', Tables.Select(t => $"{t}:{Count(database, t)}"));

    public static long Count(Database database, string table) => database.Read(c => c.ExecuteScalar<long>($"SELECT COUNT(*) FROM {table}"));
}
