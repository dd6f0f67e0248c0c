using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.DueDates;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Permissions;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Faults;

/// <summary>
/// Every write is broken off at its first step, on its way, at its last step and at its commit: it throws, nothing of it is there, and it can be done
/// again. FAULTS_EVERY=1 breaks it off at every step, FAULTS_EVERY=10 at every tenth.
/// </summary>
[Long]
public sealed class EveryWriteTests : IDisposable
{
    private readonly Scene _scene = new();
    private readonly Interruption _fault;

    public EveryWriteTests()
    {
        _fault = new Interruption(_scene.Street.Database);
        new DueDateKeeper(_scene.Street.Database, _scene.Street.Time).Attach();
        new StockKeeper(_scene.Street.Database, _scene.Street.Time).Attach();
    }

    public void Dispose() => _scene.Dispose();

    public static TheoryData<string> OfSomebody() => [.. Table.Rows.Where(row => row.Writes).Select(row => row.Name)];

    public static TheoryData<string> OfNobody() => [.. OwnWrite.All.Select(write => write.Name)];

    [Theory]
    [MemberData(nameof(OfSomebody))]
    public void What_somebody_writes_is_there_as_a_whole_or_not_at_all(string name)
    {
        var row = Table.Rows.Single(row => row.Name == name);
        var who = _scene.Be(row.May[0]);
        Try(name, row.Before, () => Assert.IsType<Outcome.Done>(row.Call(_scene, who)));
    }

    [Theory]
    [MemberData(nameof(OfNobody))]
    public void So_is_what_the_program_writes(string name)
    {
        var write = OwnWrite.All.Single(write => write.Name == name);
        Try(name, write.Before, () => write.Do(_scene));
    }

    private void Try(string name, string before, Action act)
    {
        if (before.Length > 0)
            _scene.Street.Records.Change(before);
        using var other = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = _scene.Street.Folder.DatabaseFile, Pooling = false }.ToString());
        other.Open();

        _fault.AtCommit();
        Fails(other, act, $"{name}, broken off at its commit");
        var steps = _fault.Steps;
        foreach (var step in Chosen(steps))
        {
            _fault.AtStep(step);
            Fails(other, act, $"{name}, broken off at step {step} of {steps}");
        }

        Succeeds(other, act, name);
        Assert.Empty(other.Query("PRAGMA foreign_key_check"));
        TestContext.Current.TestOutputHelper!.WriteLine($"{name}: broken off {_fault.Times} times on {steps} steps");
    }

    /// <summary>With whatever words: broken off while it prepares a statement, SQLite may call it a mistake in that.</summary>
    private static void Fails(SqliteConnection other, Action act, string what)
    {
        var before = Version(other);
        var fault = Record.Exception(act);
        Assert.True(fault is SqliteException, $"{what}: {fault?.Message ?? "it answers as if nothing had happened"}");
        Assert.True(before == Version(other), $"{what}: it left something behind.");
    }

    /// <summary>In one transaction it meets no second commit; in two, what was written first would be left without the rest.</summary>
    private void Succeeds(SqliteConnection other, Action act, string name)
    {
        var before = Version(other);
        _fault.AtCommit(2);
        try
        {
            act();
        }
        catch (SqliteException e)
        {
            Assert.Fail($"{name} is written in more than one transaction. {e.Message}");
        }
        Assert.True(before != Version(other), $"{name} wrote nothing.");
    }

    /// <summary>Changes with every commit of anybody else, https://www.sqlite.org/pragma.html#pragma_data_version</summary>
    private static long Version(SqliteConnection other) => other.ExecuteScalar<long>("PRAGMA data_version");

    private static IEnumerable<long> Chosen(long steps) => Between is { } between
        ? Enumerable.Range(0, 1 + (int)(steps / between)).Select(n => 1 + n * between).Where(step => step <= steps)
        : new[] { 1, steps / 3, steps * 2 / 3, steps }.Where(step => step > 0).Distinct();

    private static long? Between { get; } = long.TryParse(Environment.GetEnvironmentVariable("FAULTS_EVERY"), out var steps) ? steps : null;
}
