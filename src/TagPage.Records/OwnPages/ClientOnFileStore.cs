using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>The client whose own page it is.</summary>
public sealed class ClientOnFileStore(Database database)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public string Language { get; init; } = "en";
        public string? Mail { get; init; }
        public DateTimeOffset? ForgetAt { get; init; }
    }

    public Row? Get(long client) => database.Read(c => c.QuerySingleOrDefault<Row>("SELECT id, name, language, mail, forget_at FROM client WHERE id = @client", new { client }));
}
