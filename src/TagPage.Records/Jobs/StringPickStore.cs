using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Strings;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>The strings a job can name: from the catalogue, or typed in with the job and put there.</summary>
public sealed class StringPickStore(Database database)
{
    public sealed record Choice
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public Material Material { get; init; }
        public decimal GaugeMm { get; init; }
    }

    /// <summary>What the shop offers, and whichever the job names already.</summary>
    public IReadOnlyList<Choice> Choices(params IEnumerable<long> alsoIds) =>
        database.Read(c => c.Query<Choice>(ChoicesSql, new { alsoIds }).ToList());

    private const string ChoicesSql = """
        SELECT id, name, material, gauge_mm
        FROM string_kind
        WHERE offered = 1 OR id IN @alsoIds
        ORDER BY name COLLATE NOCASE, gauge_mm
        """;

    internal sealed record Picked(long MainsId, long CrossesId);

    /// <summary>The two strings of the form, a new one added; or why not, with nothing added. In the caller's transaction.</summary>
    internal static (Picked? Picked, Outcome.Refused? Refused) Pick(SqliteConnection connection, JobEntry input)
    {
        if (WhyUnknown(connection, input) is { } unknown)
            return (null, new Outcome.Refused(unknown));
        var made = input.NewString;
        var (newMains, newCrosses) = AreNew(made);
        long? id = null;
        if (made.IsGiven && FindOrAdd(connection, made, out id) is { } refused)
            return (null, refused);
        var mains = newMains ? id!.Value : input.MainsId!.Value;
        return (new Picked(mains, newCrosses ? id!.Value : input.CrossesId ?? mains), null);
    }

    /// <summary>A string chosen from the catalogue that is not there; null where all are.</summary>
    internal static StringUnknown? WhyUnknown(SqliteConnection connection, JobEntry input)
    {
        var (newMains, newCrosses) = AreNew(input.NewString);
        return !newMains && !Exists(connection, input.MainsId) ? new StringUnknown(nameof(input.MainsId))
            : !newCrosses && input.CrossesId is not null && !Exists(connection, input.CrossesId) ? new StringUnknown(nameof(input.CrossesId))
            : null;
    }

    private static (bool Mains, bool Crosses) AreNew(NewStringEntry made) =>
        (made.IsGiven && made.Place != NewStringPlace.Crosses, made.IsGiven && made.Place != NewStringPlace.Mains);

    private static Outcome.Refused? FindOrAdd(SqliteConnection connection, NewStringEntry input, out long? id)
    {
        var values = new { input.Name, Material = input.Material.ToString(), input.GaugeMm };
        var known = connection.QuerySingleOrDefault<Choice>(FindSql, values);
        id = known?.Id ?? connection.ExecuteScalar<long>(AddSql, values);
        return known is null || known.Material == input.Material ? null : new Outcome.Refused(new StringIsOther(known.Name, known.Material));
    }

    private const string FindSql = """
        SELECT id, name, material, gauge_mm FROM string_kind WHERE name = @Name COLLATE NOCASE AND gauge_mm = @GaugeMm
        """;

    private const string AddSql = """
        INSERT INTO string_kind (name, material, gauge_mm) VALUES (@Name, @Material, @GaugeMm) RETURNING id
        """;

    private static bool Exists(SqliteConnection connection, long? id) => connection.ExecuteScalar<bool>(ExistsSql, new { id });

    private const string ExistsSql = "SELECT EXISTS (SELECT 1 FROM string_kind WHERE id = @id)";
}
