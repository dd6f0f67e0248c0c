using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>Care guides as everybody reads them.</summary>
public sealed class CareStore(Database database)
{
    public sealed record Guide
    {
        public string Title { get; init; } = "";
        public string Markdown { get; init; } = "";
    }

    /// <summary>A guide that fits what is strung in a racket.</summary>
    public sealed record Link
    {
        public string Name { get; init; } = "";
        public string Title { get; init; } = "";
    }

    /// <summary>Null for an unknown name.</summary>
    public Guide? Get(string name) => database.Read(c => c.QuerySingleOrDefault<Guide>(GetSql, new { name }));

    private const string GetSql = "SELECT title, markdown FROM care_guide WHERE name = @name";

    /// <summary>At most three guides for the strings in a racket, those about their material first.</summary>
    public IReadOnlyList<Link> For(long racket) => database.Read(c => c.Query<Link>(ForSql, new { racket }).ToList());

    private const string ForSql = """
        SELECT g.name, g.title
        FROM forecast f
        JOIN care_guide g ON g.for_material IS NULL OR g.for_material IN (f.mains_material, f.crosses_material)
        WHERE f.racket_id = @racket
        ORDER BY g.for_material IS NULL, g.title COLLATE NOCASE
        LIMIT 3
        """;
}
