using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Clients;

/// <summary>A client as a message addresses them.</summary>
public sealed record Addressee
{
    public string Name { get; init; } = "";
    public string Language { get; init; } = "en";
    public string? Mail { get; init; }

    /// <summary>In the caller's transaction.</summary>
    internal static Addressee Of(SqliteConnection connection, long client) => connection.QuerySingle<Addressee>(OfSql, new { client });

    private const string OfSql = "SELECT name, language, mail FROM client WHERE id = @client";
}
