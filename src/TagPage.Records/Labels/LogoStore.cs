using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Labels;

/// <summary>The shop's logo, as redrawn from the upload.</summary>
public sealed class LogoStore(Database database)
{
    public sealed record Row
    {
        public byte[] Png { get; init; } = [];
        public int Threshold { get; init; }
    }

    public Row? Get() => database.Read(c => c.QuerySingleOrDefault<Row>("SELECT png, threshold FROM label_logo WHERE id = 1"));

    public Outcome Save(Who who, byte[] png, int threshold) => database.WriteAsOwner(who, c =>
    {
        c.Execute(SaveSql, new { png, threshold });
        return new Outcome.Done(1);
    });

    private const string SaveSql = """
        INSERT INTO label_logo (id, png, threshold) VALUES (1, @png, @threshold)
        ON CONFLICT (id) DO UPDATE SET png = @png, threshold = @threshold, version = version + 1
        """;

    /// <summary>Idempotent.</summary>
    public Outcome Remove(Who who) => database.WriteAsOwner(who, c =>
    {
        c.Execute("DELETE FROM label_logo");
        return new Outcome.Done(1);
    });
}
