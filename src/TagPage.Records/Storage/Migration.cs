using System.Reflection;
using System.Security.Cryptography;
using System.Text;

namespace TagPage.Records.Storage;

/// <summary>One step of the schema. Names sort in the order of the steps.</summary>
public sealed record Migration(string Name, string Sql)
{
    private static readonly string Prefix = typeof(Migration).Namespace + ".Migrations.";

    /// <summary>All steps this program knows: its embedded .sql files, oldest first.</summary>
    public static IReadOnlyList<Migration> Embedded { get; } =
        [.. Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(n => new Migration(n[Prefix.Length..], Text(n)))];

    /// <summary>Of its text, whatever the line endings it was checked out with.</summary>
    public string Sum => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Sql.ReplaceLineEndings("\n"))));

    private static string Text(string resource)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(resource)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
