using Dapper;
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
    public void Among_more_than_can_be_weighed_whoever_is_called_just_so_still_comes_first()
    {
        _street.Records.Change("""
            WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i <= @Many)
            INSERT INTO client (name) SELECT 'Marenholt ' || i FROM n
            """, new { Many = SearchStore.MostWeighed });
        var maren = _street.Records.Client("Maren Vey");

        var met = By("maren");

        Assert.Equal(SearchStore.Most, met.Count);
        Assert.Equal(maren, met[0].ClientId);
    }

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
        Assert.Empty(new SearchQuery(typed).Words is { } words ? _store.ByWords(words) : []);
        Assert.Empty(SearchWords.Of(typed) is { } pick ? _store.ByWords(pick) : []);
    }

    [Theory]
    [InlineData("0458", false)]
    [InlineData("960458", false)]
    [InlineData("946095", false)]
    [InlineData("60958", true)]
    [InlineData("020 7946 0958", true)]
    public void Phone_is_met_by_its_end(string typed, bool met) =>
        Assert.Equal(met, new SearchQuery(typed).PhoneEnd is { } end && _store.ByPhone(end).Count > 0);

    [Fact]
    public void Second_phone_number_is_met_as_well()
    {
        _street.Records.Change("UPDATE client SET second_phone = '+4915112345678' WHERE id = @id", new { id = _street.Odalys });

        Assert.Contains(_store.ByPhone("345678"), row => row.ClientId == _street.Odalys);
    }

    [Fact]
    public void Phone_numbers_are_looked_up_in_their_index_from_the_end()
    {
        var plan = _street.Database.Read(c => c.Query("EXPLAIN QUERY PLAN " + SearchStore.ByPhoneSql, new { backwards = "8590", Most = 1 }).Select(row => (string)row.detail).ToList());

        Assert.Contains(plan, line => line.Contains("client_by_phone_end", StringComparison.Ordinal));
        Assert.Contains(plan, line => line.Contains("client_by_second_phone_end", StringComparison.Ordinal));
        Assert.Contains(plan, line => line.StartsWith("SEARCH c USING INTEGER PRIMARY KEY", StringComparison.Ordinal));
    }

    [Fact]
    public void One_letter_brings_who_is_called_so_before_who_begins_with_it()
    {
        for (var n = 0; n < SearchStore.Most; n++)
            _street.Records.Client($"Quill {n}");
        var brief = _street.Records.Client("Q");

        var found = By("q");

        Assert.Equal(brief, found[0].ClientId);
        Assert.Equal(SearchStore.Most, found.Count);
    }

    [Fact]
    public void Ticket_brings_its_racket_and_an_unknown_one_nothing()
    {
        Assert.Equal((_street.Racket, _street.Strung), _store.ByTicket(1001) is { } row ? (row.RacketId!.Value, row.JobId!.Value) : default);
        Assert.Null(_store.ByTicket(4711));
    }

    [Theory]
    [InlineData("1001", 1001L, "1001")]
    [InlineData("#1001", 1001L, null)]
    [InlineData("0044 20", null, "4420")]
    [InlineData("+44 (0)20", null, "44020")]
    [InlineData("00", null, null)]
    [InlineData("012", 12L, null)]
    [InlineData("99999999999999999999", null, "99999999999999999999")]
    [InlineData("-5", null, null)]
    [InlineData("10 a", null, null)]
    public void Number_is_read_as_a_ticket_and_as_the_end_of_a_phone_number(string typed, long? ticket, string? end) =>
        Assert.Equal((ticket, end), (new SearchQuery(typed).Ticket, new SearchQuery(typed).PhoneEnd));

    [Theory]
    [InlineData(null)]
    [InlineData("   ")]
    [InlineData("…—!")]
    public void Where_no_letter_and_no_digit_was_typed_there_is_nothing_to_look_for(string? typed)
    {
        Assert.Null(new SearchQuery(typed).Words);
        Assert.Null(SearchWords.Of(typed));
    }

    [Fact]
    public void Text_longer_than_any_name_is_not_looked_for()
    {
        Assert.NotNull(new SearchQuery(new string('x', SearchQuery.Longest)).Words);
        Assert.Null(new SearchQuery(new string('x', SearchQuery.Longest + 1)).Words);
    }

    [Theory]
    [InlineData("Łukasz Ørsted", "Łukasz")]
    [InlineData("Łukasz Ørsted", "lukasz orsted")]
    [InlineData("Lukasz", "Łukasz")]
    [InlineData("Müller", "muller")]
    [InlineData("Muller", "Müller")]
    [InlineData("Đorđe Weiß", "dorde weiss")]
    [InlineData("Æsa Þórsdóttir", "aesa thors")]
    [InlineData("O’Hara", "o'hara")]
    [InlineData("Anne-Marie", "anne marie")]
    [InlineData("Nguyễn", "nguyen")]
    [InlineData("हिन्दी", "हिन्दी")]
    [InlineData("李 小龍", "李")]
    public void Name_is_met_as_it_is_typed_elsewhere(string name, string typed)
    {
        _street.Records.Change("UPDATE client SET name = @name WHERE id = @Ewan", new { name, _street.Ewan });

        Assert.Equal(_street.Ewan, Assert.Single(By(typed)).ClientId);
    }

    [Fact]
    public void Client_found_by_name_comes_with_all_rackets_and_a_racket_found_by_its_frame_alone()
    {
        var second = _street.Records.Racket(_street.Pim, number: 2, frame: "Tarn 100");
        _street.Records.Racket(_street.Records.Player(_street.Odalys, "Ayo Ferran"));

        Assert.Equal(["Ayo Ferran 1", "Pim Ferran 1", "Pim Ferran 2"], By("odalys").Select(row => $"{row.Player} {row.Number}"));
        Assert.Equal([second], By("tarn").Select(row => row.RacketId!.Value));
    }

    [Fact]
    public void Common_name_brings_no_more_than_fit_on_the_page()
    {
        for (var n = 0; n < SearchStore.Most + 5; n++)
            _street.Records.Client($"Sorrel {n}", phone: $"+4420794{n:D5}");

        Assert.Equal(SearchStore.Most, By("sorrel").Count);
        Assert.Equal(SearchStore.Most, _store.ByPhone("").Count);
    }

    private IReadOnlyList<SearchRow> By(string typed) => _store.ByWords(new SearchQuery(typed).Words!);
}
