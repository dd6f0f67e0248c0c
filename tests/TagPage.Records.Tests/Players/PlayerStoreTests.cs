using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Records.Players;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Players;

/// <summary>Who may put a player on file and change the habits that dates hang on.</summary>
public sealed class PlayerStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly PlayerStore _store;

    public PlayerStoreTests() => _store = new PlayerStore(_street.Database, _street.Time);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_puts_players_on_file_and_changes_them(Actor actor, bool allowed)
    {
        var who = _street.Be(actor);

        _street.Check(allowed, () => _store.Add(who, _street.Odalys, Bo));
        _street.Check(allowed, () => _store.Change(who, _street.Pim, Bo with { Version = 1 }));
    }

    [Fact]
    public void Client_or_player_that_is_not_there_is_absent()
    {
        Assert.IsType<Outcome.Absent>(_store.Add(Who.Shop, 99, Bo));
        Assert.IsType<Outcome.Absent>(_store.Change(Who.Shop, 99, Bo));

        Assert.Equal(1, _street.Records.Count("player"));
    }

    [Fact]
    public void Everything_comes_back_as_it_was_saved()
    {
        var id = Assert.IsType<Outcome.Done>(_store.Add(Who.Shop, _street.Odalys, Bo)).Id;

        var row = _store.Get(id)!;
        Assert.Equal(("Bo Ferran", true, 2.5m, 1.25m, Hitting.Hard, "leans on the throat"), (row.Name, row.Junior, row.TimesAWeek, row.HoursATime, row.Hitting, row.Note));
        Assert.Equal((RestringRule.EveryWeeks, 12), (row.Rule, row.EveryWeeks));
        Assert.Equal("Odalys Ferran", row.ClientName);
    }

    [Fact]
    public void Second_of_two_who_read_the_same_player_changes_nothing()
    {
        _street.Check(true, () => _store.Change(Who.Shop, _street.Pim, Bo with { Version = 1 }));

        Assert.Equal(Outcome.Stale, _store.Change(Who.Shop, _street.Pim, Bo with { Version = 1, Name = "Second" }));

        Assert.Equal("Bo Ferran", _store.Get(_street.Pim)!.Name);
    }

    [Fact]
    public void Changed_habits_mark_the_dates_to_be_worked_out_again_and_a_changed_note_does_not()
    {
        _street.Records.Change("DELETE FROM due_again");
        _street.Records.Change("UPDATE player SET note = 'left-handed'");
        Assert.Equal(0, _street.Records.Count("due_again"));

        _street.Check(true, () => _store.Change(Who.Shop, _street.Pim, Bo with { Version = 1 }));

        Assert.Equal(1, _street.Records.Count("due_again", $"player_id = {_street.Pim}"));
    }

    private static PlayerEntry Bo => new()
    {
        FormKey = FormKey.New(),
        Name = "Bo Ferran",
        Junior = true,
        TimesAWeek = 2.5m,
        HoursATime = 1.25m,
        Hitting = Hitting.Hard,
        Rule = RestringRule.EveryWeeks,
        EveryWeeks = 12,
        Note = "leans on the throat",
    };
}
