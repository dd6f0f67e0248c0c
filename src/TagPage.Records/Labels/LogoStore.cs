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

    public void Save(byte[] png, int threshold) => database.Write(c => c.Execute(SaveSql, new { png, threshold }));

    private const string SaveSql = """
        INSERT INTO label_logo (id, png, threshold) VALUES (1, @png, @threshold)
        ON CONFLICT (id) DO UPDATE SET png = @png, threshold = @threshold, version = version + 1
        """;

    public void Remove() => database.Write(c => c.Execute("DELETE FROM label_logo"));
}
