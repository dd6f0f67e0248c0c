using TagPage.Records.Search;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Search;

/// <summary>The search table follows the records by triggers, whoever changes them, and nothing typed is an operator.</summary>
public sealed class SearchStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly SearchStore _store;

    public SearchStoreTests() => _store = new SearchStore(_street.Database);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("odalys")]
    [InlineData("pim")]
    [InlineData("pellmore")]
    [InlineData("FERR")]
    [InlineData("mead pell")]
    public void Racket_is_met_by_its_clients_its_players_and_its_frames_words(string typed) =>
        Assert.Equal(_street.Racket, Assert.Single(By(typed)).RacketId);

    [Fact]
    public void New_name_is_met_at_once_and_the_old_one_no_more()
    {
        _street.Records.Change("UPDATE client SET name = 'Zoë Ångström' WHERE id = @Odalys; UPDATE player SET name = 'Mika'; UPDATE racket SET frame = 'Tarn 100';", new { _street.Odalys });

        Assert.All(["zoe", "angstrom", "mika", "tarn"], typed => Assert.Single(By(typed)));
        Assert.All(["odalys", "pim", "pellmore"], typed => Assert.Empty(By(typed)));
    }

    [Fact]
    public void Who_was_deleted_is_met_no_more()
    {
        _street.Records.Change("DELETE FROM client WHERE id = @Ewan", new { _street.Ewan });

        Assert.Empty(By("ewan"));
        Assert.Equal(0, _street.Records.Count("search", "words LIKE '%Ewan%'"));
    }

    [Theory]
    [InlineData("\"")]
    [InlineData("* OR NEAR(")]
    [InlineData("pim\" OR \"ewan")]
    [InlineData("pim OR ewan")]
    [InlineData("pim NOT nobody")]
    [InlineData("words:pim NOT odalys")]
    public void Nothing_typed_is_an_operator(string typed)
    {
        Assert.Empty(new Asked(typed).Words is { } words ? _store.ByWords(words) : []);
        Assert.Empty(SearchWords.Of(typed) is { } pick ? _store.ByWords(pick) : []);
    }

    [Theory]
    [InlineData("0458", false)]
    [InlineData("960458", false)]
    [InlineData("946095", false)]
    [InlineData("60958", true)]
    [InlineData("020 7946 0958", true)]
    public void Phone_is_met_by_its_end(string typed, bool met) =>
        Assert.Equal(met, new Asked(typed).PhoneEnd is { } end && _store.ByPhone(end).Count > 0);

    [Fact]
    public void Ticket_brings_its_racket_and_an_unknown_one_nothing()
    {
        Assert.Equal((_street.Racket, _street.Strung), _store.ByTicket(1001) is { } row ? (row.RacketId!.Value, row.JobId!.Value) : default);
        Assert.Null(_store.ByTicket(4711));
    }

    private IReadOnlyList<SearchRow> By(string typed) => _store.ByWords(new Asked(typed).Words!);
}
