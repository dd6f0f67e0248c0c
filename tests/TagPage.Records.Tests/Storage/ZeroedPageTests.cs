using Dapper;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Permissions;

namespace TagPage.Records.Tests.Storage;

/// <summary>A page of zeros, as a disk that fails leaves it, in the place of each table and index in turn.</summary>
public sealed class ZeroedPageTests : IDisposable
{
    private const int PageBytes = 4096;

    private readonly Scene _scene = new();

    public void Dispose() => _scene.Dispose();

    [Fact]
    public void Daily_check_and_the_check_of_backups_find_it_wherever_it_is()
    {
        var whole = Path.Combine(_scene.Street.Folder.Root, "whole.db");
        _scene.Street.Database.CopyTo(whole);
        var bytes = File.ReadAllBytes(whole);
        var places = _scene.Street.Database.Read(c => c.Query<(string Name, long Page)>("SELECT name, rootpage FROM sqlite_schema WHERE rootpage > 1").ToList());

        var unseen = places.Where(p => !IsFound(bytes, p.Page, quick: false)).Select(p => p.Name).ToList();

        Assert.True(places.Count > 150, $"Only {places.Count} tables and indexes.");
        Assert.Empty(unseen);
        Assert.DoesNotContain(places.Where(p => p.Name == "client" || p.Name == "job"), p => !IsFound(bytes, p.Page, quick: true));
    }

    /// <summary>As a disk fails under a program that runs: its open connections still know the page as it was.</summary>
    [Fact]
    public void Daily_check_looks_at_the_disk_and_not_at_what_the_program_remembers()
    {
        var database = _scene.Street.Database;
        using var check = new DatabaseCheck(database, _scene.Street.Time, NullLogger<DatabaseCheck>.Instance);
        database.EmptyLog();
        check.Look();
        Assert.True(check.IsSound);
        Assert.Null(database.Read(FullCheck.Finding));

        Zero(_scene.Street.Folder.DatabaseFile, database.Read(c => c.ExecuteScalar<long>("SELECT rootpage FROM sqlite_schema WHERE name = 'client'")));

        Assert.Null(database.Read(FullCheck.Finding));
        check.Look();
        Assert.False(check.IsSound);
    }

    private static void Zero(string file, long page)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite) { Position = (page - 1) * PageBytes };
        stream.Write(new byte[PageBytes]);
    }

    private bool IsFound(byte[] whole, long page, bool quick)
    {
        var file = Path.Combine(_scene.Street.Folder.Root, "zeroed.db");
        File.WriteAllBytes(file, whole);
        Zero(file, page);
        try
        {
            using var connection = FullCheck.Open(file);
            return (quick ? DatabaseCheck.Finding(connection) : FullCheck.Damage(connection)) is not null;
        }
        catch (Microsoft.Data.Sqlite.SqliteException)
        {
            return true;
        }
    }
}
