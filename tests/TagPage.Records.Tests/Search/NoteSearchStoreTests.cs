using TagPage.Records.Search;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Search;

/// <summary>Notes are found by their words, whoever changes them, until they are gone.</summary>
public sealed class NoteSearchStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly NoteSearchStore _store;

    public NoteSearchStoreTests()
    {
        _store = new NoteSearchStore(_street.Database);
        _street.Records.Change("""
            UPDATE client SET note = 'rings twice' WHERE id = @Odalys;
            UPDATE player SET note = 'left hander, grip of Weiß' WHERE id = @Pim;
            UPDATE racket SET note = 'grommets cracked at the tip' WHERE id = @Racket;
            UPDATE job SET note = 'Łukasz wants two knots' WHERE id = @Strung;
            """, new { _street.Odalys, _street.Pim, _street.Racket, _street.Strung });
    }

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("twice", true, false, false)]
    [InlineData("hander", true, true, false)]
    [InlineData("grommet tip", true, true, true)]
    public void Note_leads_to_what_it_is_about(string typed, bool client, bool player, bool racket)
    {
        var met = Assert.Single(By(typed));

        Assert.Equal((client, player, racket, false), (met.ClientId == _street.Odalys, met.Player is not null, met.RacketId == _street.Racket, met.JobId is not null));
    }

    [Fact]
    public void Note_of_a_ticket_leads_to_the_ticket_and_is_shown_as_typed()
    {
        var met = Assert.Single(By("knots"));

        Assert.Equal((_street.Strung, _street.Racket, "Łukasz wants two knots"), (met.JobId!.Value, met.RacketId!.Value, met.Excerpt));
    }

    [Theory]
    [InlineData("weiß")]
    [InlineData("Łukasz")]
    public void Letters_of_their_own_are_found_as_they_stand(string typed) => Assert.Single(By(typed));

    [Fact]
    public void Changed_note_is_found_by_its_new_words_alone_and_an_emptied_one_by_none()
    {
        _street.Records.Change("UPDATE racket SET note = 'new grommets' WHERE id = @Racket; UPDATE player SET note = '' WHERE id = @Pim; UPDATE player SET note = 'keeps his own string' WHERE id = @Pim", new { _street.Racket, _street.Pim });

        Assert.Single(By("new"));
        Assert.Single(By("own string"));
        Assert.All(["cracked", "hander"], typed => Assert.Empty(By(typed)));
        _street.Records.Change("UPDATE player SET note = '' WHERE id = @Pim", new { _street.Pim });
        Assert.Empty(By("own string"));
    }

    [Fact]
    public void Note_of_who_was_deleted_is_in_no_table_any_more()
    {
        var gone = _street.Records.Client("Wren Sallow");
        _street.Records.Change("UPDATE client SET note = 'zanzibar' WHERE id = @gone", new { gone });
        Assert.Single(By("zanzibar"));

        _street.Records.Change("DELETE FROM client WHERE id = @gone", new { gone });

        Assert.Empty(By("zanzibar"));
        Assert.Equal(0, _street.Records.Count("search_note", "words LIKE '%zanzibar%'"));
    }

    [Fact]
    public void Common_word_brings_the_newest_and_no_more_than_fit_on_the_page()
    {
        for (var n = 0; n < NoteSearchStore.Most + 5; n++)
            _street.Records.Change("UPDATE client SET note = 'pays in sorrel' WHERE id = @id", new { id = _street.Records.Client($"Client {n:D2}") });

        var met = By("sorrel");

        Assert.Equal(NoteSearchStore.Most, met.Count);
        Assert.Equal("Client 24", met[0].Client);
    }

    private IReadOnlyList<NoteRow> By(string typed) => _store.ByWords(new SearchQuery(typed).NoteWords!);
}
