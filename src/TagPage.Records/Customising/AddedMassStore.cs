using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Customising;
using TagPage.Records.Storage;

namespace TagPage.Records.Customising;

/// <summary>What was added to frames, piece by piece, and taken off again.</summary>
public sealed class AddedMassStore(Database database)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public string Place { get; init; } = "";
        public double AtCm { get; init; }
        public double OffAxisCm { get; init; }
        public bool OnStrings { get; init; }
        public double Grams { get; init; }
        public AddedMaterial Material { get; init; }
        public DateOnly AddedOn { get; init; }
        public DateOnly? RemovedOn { get; init; }

        public AddedMass Mass => new(Grams, AtCm, OffAxisCm);
    }

    private const string Columns = "a.id, a.place, a.at_cm, a.off_axis_cm, a.on_strings, a.grams, a.material, a.added_on, a.removed_on";

    /// <summary>All that was ever added to a racket, what is still on it first.</summary>
    public IReadOnlyList<Row> Of(long racket) => database.Read(c => c.Query<Row>(OfSql, new { racket }).AsList());

    private const string OfSql = $"""
        SELECT {Columns}
        FROM added_mass a
        WHERE a.racket_id = @racket
        ORDER BY a.removed_on IS NOT NULL, a.added_on DESC, a.at_cm, a.id
        """;

    internal static IReadOnlyList<Row> Present(SqliteConnection connection, long racket) => connection.Query<Row>(PresentSql, new { racket }).AsList();

    private const string PresentSql = $"""
        SELECT {Columns}
        FROM added_mass a
        WHERE a.racket_id = @racket AND a.removed_on IS NULL
        ORDER BY a.id
        """;

    internal static void Add(SqliteConnection connection, long racket, Row mass) => connection.Execute(AddSql, new
    {
        racket,
        mass.Place,
        mass.AtCm,
        mass.OffAxisCm,
        mass.OnStrings,
        mass.Grams,
        Material = mass.Material.ToString(),
        mass.AddedOn,
    });

    private const string AddSql = """
        INSERT INTO added_mass (racket_id, place, at_cm, off_axis_cm, on_strings, grams, material, added_on)
        VALUES (@racket, @Place, @AtCm, @OffAxisCm, @OnStrings, @Grams, @Material, @AddedOn)
        """;

    internal static void Remove(SqliteConnection connection, long id, DateOnly on) => connection.Execute(RemoveSql, new { id, on });

    private const string RemoveSql = "UPDATE added_mass SET removed_on = @on WHERE id = @id AND removed_on IS NULL";
}
