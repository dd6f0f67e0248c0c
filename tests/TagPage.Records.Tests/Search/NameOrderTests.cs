using Dapper;
using TagPage.Records.Clients;
using TagPage.Records.Search;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Search;

/// <summary>Keys follow names, settings and the program, and lists are read from their index.</summary>
public sealed class NameOrderTests : IDisposable
{
    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    private string Clients => string.Join(", ", new ClientListStore(_street.Database).Page("", null).Select(row => row.Name));

    [Fact]
    public void Family_names_come_first_where_the_shop_wants_it_and_every_key_is_made_again()
    {
        _street.Records.Client("Ada Zorn");
        _street.Records.Client("Mika");
        Assert.Equal("Ada Zorn, Ewan Lockyer, Mika, Odalys Ferran", Clients);

        _street.Records.Change("UPDATE shop SET by_last_word = 1");
        Assert.Equal("Odalys Ferran, Ewan Lockyer, Mika, Ada Zorn", Clients);

        _street.Records.Change("UPDATE shop SET by_last_word = 0");
        Assert.Equal("Ada Zorn, Ewan Lockyer, Mika, Odalys Ferran", Clients);
    }

    [Fact]
    public void Same_family_stands_by_given_name_and_a_list_begins_at_family_names_typed()
    {
        _street.Records.Change("UPDATE shop SET by_last_word = 1");
        _street.Records.Client("Bea Ferran");
        _street.Records.Client("Zoe Ferr");

        Assert.Equal("Zoe Ferr, Bea Ferran, Odalys Ferran, Ewan Lockyer", Clients);
        Assert.Equal("Ewan Lockyer", new ClientListStore(_street.Database).Page("g", null)[0].Name);
    }

    [Fact]
    public void Family_names_of_several_words_stand_together()
    {
        _street.Records.Change("UPDATE shop SET by_last_word = 1");
        var store = new ClientStore(_street.Database, new ShopStore(_street.Database), _street.Clock);
        foreach (var name in new[] { "Jan van der Berg", "García Márquez, Ana", "Ana Zorn", "Eva de la Cruz" })
            Assert.IsType<Outcome.Done>(store.Add(Who.Shop, new ClientEntry { FormKey = FormKey.New(), Name = name, Language = "en" }));

        Assert.Equal("Eva de la Cruz, Odalys Ferran, Ana García\u00A0Márquez, Ewan Lockyer, Jan van der Berg, Ana Zorn", Clients);
    }

    [Fact]
    public void Language_of_names_wins_over_the_one_the_owner_writes_in()
    {
        _street.Records.Client("Åsa Bergman");
        _street.Records.Change("UPDATE shop SET language = 'en', names_in = 'sv'");
        Assert.Equal("Ewan Lockyer, Odalys Ferran, Åsa Bergman", Clients);

        _street.Records.Change("UPDATE shop SET names_in = NULL");
        Assert.Equal("Åsa Bergman, Ewan Lockyer, Odalys Ferran", Clients);
    }

    [Fact]
    public void New_name_moves_its_client_and_its_player()
    {
        var zoe = _street.Records.Player(_street.Odalys, "Zoe Ferran");
        _street.Records.Change("UPDATE client SET name = 'Zita Ferran' WHERE id = @Odalys; UPDATE player SET name = 'Ada Ferran' WHERE id = @zoe", new { _street.Odalys, zoe });

        Assert.Equal("Ewan Lockyer, Zita Ferran", Clients);
        Assert.Equal("Ada Ferran, Pim Ferran", new ClientListStore(_street.Database).Page("z", null)[0].Players);
        Assert.Equal(0, _street.Records.Count("client", "name_key IS NULL") + _street.Records.Count("player", "name_key IS NULL"));
    }

    [Fact]
    public void Keys_of_another_version_of_the_order_are_made_again_at_the_start()
    {
        _street.Database.BeforeCommit = null;
        _street.Records.Change("UPDATE name_order SET made_by = 'en as written 1'; UPDATE client SET name_key = x'00' WHERE name LIKE 'Odalys%'");
        Assert.Equal("Odalys Ferran, Ewan Lockyer", Clients);

        new NameKeeper(_street.Database).Attach();

        Assert.Equal("Ewan Lockyer, Odalys Ferran", Clients);
    }

    [Theory]
    [InlineData(ClientListStore.FromSql)]
    [InlineData(ClientListStore.AfterSql)]
    public void List_is_read_from_the_index_and_nothing_is_sorted(string sql)
    {
        var plan = _street.Database.Read(c => c.Query("EXPLAIN QUERY PLAN " + sql, new { From = Array.Empty<byte>(), After = 1, Count = 51 }).Select(row => (string)row.detail).ToList());

        Assert.Contains(plan, line => line.StartsWith("SEARCH c ", StringComparison.Ordinal) && line.Contains("client_by_name", StringComparison.Ordinal));
        Assert.DoesNotContain(plan, line => line.StartsWith("SCAN", StringComparison.Ordinal) || line.StartsWith("USE TEMP B-TREE FOR ORDER BY", StringComparison.Ordinal));
    }
}
