using TagPage.Records.Clients;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Clients;

/// <summary>The clients from A to Z: everybody once, whatever they are called.</summary>
public sealed class ClientListStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly ClientListStore _store;

    public ClientListStoreTests() => _store = new ClientListStore(_street.Database);

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Pages_hold_everybody_once_and_in_order_even_where_many_are_called_the_same()
    {
        for (var n = 0; n < 120; n++)
            _street.Records.Client(n % 3 == 0 ? "Mika Sorrel" : n % 3 == 1 ? $"mika sorrel {n}" : $"Client {n}");
        var met = new List<ClientListStore.Row>();
        long? after = null;
        do
        {
            var page = _store.Page("", after);
            met.AddRange(page.Take(ClientListStore.PageSize));
            after = page.Count > ClientListStore.PageSize ? page[ClientListStore.PageSize - 1].Id : null;
        } while (after is not null);

        Assert.Equal(122, met.Count);
        Assert.Equal(122, met.Select(row => row.Id).Distinct().Count());
        Assert.Equal(met.OrderBy(row => row.Name, StringComparer.OrdinalIgnoreCase).ThenBy(row => row.Id).Select(row => row.Id), met.Select(row => row.Id));
    }

    /// <summary>Orders of Unicode CLDR: å after z in Swedish, ä with a in German, ch after h in Czech.</summary>
    [Theory]
    [InlineData("sv", "Åberg Zorn Öberg", "Zorn Åberg Öberg")]
    [InlineData("de", "Zorn Ärmel Arm", "Arm Ärmel Zorn")]
    [InlineData("cs", "Chalupa Horák Cibulka Iva", "Cibulka Horák Chalupa Iva")]
    [InlineData("en", "éclair Zoe Eve adam", "adam éclair Eve Zoe")]
    public void Names_stand_in_the_order_of_the_shops_language(string language, string names, string sorted)
    {
        _street.Records.Change("DELETE FROM job; DELETE FROM tag; DELETE FROM racket; DELETE FROM player; DELETE FROM client");
        _street.Records.Change("UPDATE shop SET language = @language", new { language });
        foreach (var name in names.Split(' '))
            _street.Records.Client(name);

        Assert.Equal(sorted, string.Join(' ', _store.Page("", null).Select(row => row.Name)));
    }

    [Theory]
    [InlineData("", "Ewan Lockyer")]
    [InlineData("e", "Ewan Lockyer")]
    [InlineData("EWAN LOCKYER", "Ewan Lockyer")]
    [InlineData("F", "Odalys Ferran")]
    [InlineData("odalys g", null)]
    [InlineData("%", "Ewan Lockyer")]
    [InlineData("' OR 1=1 --", "Ewan Lockyer")]
    public void List_begins_at_the_letters_typed(string from, string? first) => Assert.Equal(first, _store.Page(from, null) is [var row, ..] ? row.Name : null);

    [Fact]
    public void Row_tells_the_players_and_how_many_rackets_they_have()
    {
        _street.Records.Racket(_street.Records.Player(_street.Odalys, "Ayo Ferran"));
        _street.Records.Player(_street.Odalys, "Zoe Ferran");

        var rows = _store.Page("", null);

        Assert.Equal(["|0", "Ayo Ferran, Pim Ferran, Zoe Ferran|2"], rows.Select(row => $"{row.Players}|{row.Rackets}"));
    }

    [Fact]
    public void Page_after_a_client_who_is_gone_meanwhile_is_empty()
    {
        _street.Records.Change("DELETE FROM client WHERE id = @Ewan", new { _street.Ewan });

        Assert.Empty(_store.Page("", _street.Ewan));
    }
}
