using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Clients;

/// <summary>A client as a message addresses them.</summary>
public sealed record Addressee
{
    public string Name { get; init; } = "";
    public string Language { get; init; } = "en";
    public string? Mail { get; init; }

    /// <summary>A mail server said that nobody has this address.</summary>
    public bool IsRefused { get; init; }

    /// <summary>There is an address, and nothing is known against it.</summary>
    public bool IsReachable => Mail is not null && !IsRefused;

    /// <summary>In the caller's transaction.</summary>
    internal static Addressee Of(SqliteConnection connection, long client) => connection.QuerySingle<Addressee>(OfSql, new { client });

    private const string OfSql = "SELECT name, language, mail, COALESCE(mail_refused = mail, 0) AS is_refused FROM client WHERE id = @client";
}
