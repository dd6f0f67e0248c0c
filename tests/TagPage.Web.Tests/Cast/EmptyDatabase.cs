using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Cast;

/// <summary>A database of its own in a folder of its own, without the rest of the program.</summary>
public sealed class EmptyDatabase : IDisposable
{
    public EmptyDatabase() => Database = new Database(Folder);

    public DataFolder Folder { get; } = TestFolders.Lend();

    public Database Database { get; }

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 10, 0, 0, TimeSpan.Zero));

    public Migrator Migrator(params IReadOnlyList<Migration> known) =>
        new(Database, Folder, Clock, known, NullLogger<Migrator>.Instance);

    public void Dispose()
    {
        Database.Dispose();
        TestFolders.TakeBack(Folder);
    }
}
