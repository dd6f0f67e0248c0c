using System.Collections;
using TagPage.Records.Privacy;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Permissions;

/// <summary>Everybody tries everything that a store does in somebody's name.</summary>
[Long]
public sealed class WhoTests : IDisposable
{
    private readonly Scene _scene = new();

    public void Dispose() => _scene.Dispose();

    public static TheoryData<string> All() => [.. Table.Rows.Select(row => row.Name)];

    public static TheoryData<string, Actor> Allowed()
    {
        var all = new TheoryData<string, Actor>();
        foreach (var row in Table.Rows)
            foreach (var actor in row.May)
                all.Add(row.Name, actor);
        return all;
    }

    [Theory]
    [MemberData(nameof(Allowed))]
    public void Those_who_may_get_it(string name, Actor actor)
    {
        var row = Set(name);
        var hers = OfHers();

        Try(row, actor, true);

        if (actor == Actor.OtherClient)
            Assert.Equal(hers, OfHers());
    }

    [Theory]
    [MemberData(nameof(All))]
    public void For_everybody_else_it_is_not_there_and_nothing_changes(string name)
    {
        var row = Set(name);
        Assert.All(Enum.GetValues<Actor>().Except(row.May), actor => Try(row, actor, false));
    }

    private Row Set(string name)
    {
        var row = Table.Rows.Single(row => row.Name == name);
        if (row.Before.Length > 0)
            _scene.Street.Records.Change(row.Before);
        return row;
    }

    private void Try(Row row, Actor actor, bool allowed)
    {
        if (row.Writes)
            _scene.Street.Check(allowed, () => (Outcome)row.Call(_scene, _scene.Be(actor))!);
        else
            Reads(row, actor, allowed);
    }

    private void Reads(Row row, Actor actor, bool allowed)
    {
        var before = _scene.Street.Database.Dump();
        Assert.Equal(allowed, row.Call(_scene, _scene.Be(actor)) is not (null or false or ICollection { Count: 0 }));
        Assert.Equal(before, _scene.Street.Database.Dump());
    }

    /// <summary>Everything on file about Odalys, as she would take it away.</summary>
    private string OfHers() => string.Join('\n', new ExportStore(_scene.Street.Database).Read(_scene.Street.Odalys, (_, _) => { })
        .SelectMany(sheet => sheet.Rows.Select(row => $"{sheet.Name}: {string.Join('|', row)}")));
}
