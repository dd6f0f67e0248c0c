using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Storage;

public sealed class CopySweeperTests : IDisposable
{
    private readonly EmptyDatabase _home = new();

    public void Dispose() => _home.Dispose();

    [Fact]
    public void Copies_made_before_a_new_version_go_after_30_days_and_the_owners_own_files_stay()
    {
        var first = new Migration("0001-first.sql", "CREATE TABLE one (n INTEGER) STRICT");
        _home.Migrator(first).Run();
        _home.Migrator(first, new Migration("0002-second.sql", "CREATE TABLE two (n INTEGER) STRICT")).Run();
        File.WriteAllText(Path.Combine(_home.Folder.Copies, "before-christmas.db"), "the owner's own");
        using var sweeper = new CopySweeper(_home.Folder, _home.Clock, NullLogger<CopySweeper>.Instance);

        _home.Clock.Advance(TimeSpan.FromDays(30));
        sweeper.Sweep();
        Assert.Equal(["20261125-100000-before-0002-second.db", "before-christmas.db"], Copies());

        _home.Clock.Advance(TimeSpan.FromSeconds(1));
        sweeper.Sweep();
        Assert.Equal(["before-christmas.db"], Copies());
    }

    private IEnumerable<string?> Copies() => Directory.GetFiles(_home.Folder.Copies).Select(Path.GetFileName).Order(StringComparer.Ordinal);
}
