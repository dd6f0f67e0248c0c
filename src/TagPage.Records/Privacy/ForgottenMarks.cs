using System.Security.Cryptography;
using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Privacy;

/// <summary>
/// Who was forgotten, as marks that say nothing of a person: an HMAC under the random bits that the client's own row held. The row is
/// gone, so that nobody can tell whose a mark is, until an older backup brings the row back; then it is found and deleted again.
/// </summary>
public static class ForgottenMarks
{
    private static readonly byte[] Words = "TagPage forgotten client"u8.ToArray();

    public static string Of(string secret) => Convert.ToHexStringLower(HMACSHA256.HashData(Convert.FromHexString(secret), Words));

    /// <summary>In the transaction that deletes the client.</summary>
    internal static void Keep(SqliteConnection connection, long client, DateTimeOffset now)
    {
        if (connection.ExecuteScalar<string?>("SELECT secret FROM client WHERE id = @client", new { client }) is { } secret)
            connection.Execute(KeepSql, new { Mark = Of(secret), now });
    }

    private const string KeepSql = "INSERT INTO forgotten (mark, at) VALUES (@Mark, @now) ON CONFLICT (mark) DO NOTHING";

    internal static IReadOnlyList<string> All(SqliteConnection connection) => connection.Query<string>("SELECT mark FROM forgotten ORDER BY mark").AsList();

    /// <summary>Adds marks that were kept elsewhere.</summary>
    internal static void Add(SqliteConnection connection, IEnumerable<string> marks, DateTimeOffset now) =>
        connection.Execute(KeepSql, marks.Select(mark => new { Mark = mark, now }));

    /// <summary>Clients whom a backup has brought back though they were forgotten.</summary>
    internal static IReadOnlyList<long> BroughtBack(SqliteConnection connection, IReadOnlyCollection<string> marks)
    {
        var known = marks.ToHashSet();
        return known.Count == 0 ? [] : [.. connection.Query<(long Id, string Secret)>("SELECT id, secret FROM client").Where(c => known.Contains(Of(c.Secret))).Select(c => c.Id)];
    }
}
