using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>The web address that the owner chose in the browser, kept in memory until a setting is written.</summary>
public sealed class AddressStore(Database database, TimeProvider clock)
{
    private sealed record Kept(long Mark, string? Base);

    /// <summary>Tags that carry the present address: on rackets, and made ahead on rolls.</summary>
    public sealed record Carriers
    {
        public int InUse { get; init; }
        public int Blank { get; init; }
    }

    private Kept? _kept;

    /// <summary>Without a trailing slash; null while none was chosen.</summary>
    public string? Chosen
    {
        get
        {
            var mark = database.Changes.OfAll;
            if (_kept is { } kept && kept.Mark == mark)
                return kept.Base;
            var chosen = database.Read(c => c.ExecuteScalar<string?>("SELECT base FROM chosen_address WHERE id = 1"));
            _kept = new Kept(mark, chosen);
            return chosen;
        }
    }

    /// <summary>From now on links and labels carry it.</summary>
    /// <param name="who">The shop.</param>
    /// <param name="address">Without a trailing slash.</param>
    public Outcome Choose(Who who, string address) => database.WriteAsOwner(who, c =>
    {
        c.Execute(ChooseSql, new { Base = address });
        UsedAddressStore.Note(c, address, clock.GetUtcNow());
        return new Outcome.Done(1);
    });

    private const string ChooseSql = "INSERT INTO chosen_address (id, base) VALUES (1, @Base) ON CONFLICT (id) DO UPDATE SET base = @Base";

    public Carriers Carry() => database.Read(c => c.QuerySingle<Carriers>(CarrySql));

    private const string CarrySql = """
        SELECT (SELECT COUNT(*) FROM tag WHERE state = 'Live') AS in_use, (SELECT COUNT(*) FROM tag WHERE state = 'Unassigned') AS blank
        """;
}
