using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Records.Players;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Players;

/// <summary>A player: habit, pauses, how play is shared among the rackets, and what was learned from their strings.</summary>
public sealed class PlayerModel(PlayerStore players, PlayerPageStore store, PauseStore pauses, ShopStore shops, ShopClock clock)
    : RecordPage<PlayerStore.Row>
{
    /// <summary>A racket, its share of play in per cent, and its date.</summary>
    public sealed record Item(PlayerPageStore.Racket Racket, double Share, RestringBy By);

    public IReadOnlyList<Item> Rackets { get; private set; } = [];

    public IReadOnlyList<PauseStore.Row> Pauses { get; private set; } = [];

    public IReadOnlyList<LearnedRow> Learned { get; private set; } = [];

    /// <summary>How long their strings were in, the newest first.</summary>
    public IReadOnlyList<PlayerPageStore.Bed> Beds { get; private set; } = [];

    public StartingValues Values => shops.Get().StartingValues;

    public DateOnly Today => clock.Today;

    protected override PlayerStore.Row? Find(long id) => players.Get(id);

    public void OnGet()
    {
        Pauses = pauses.Of(Id);
        Beds = store.Beds(Id, IntervalsSvg.MostBars);
        var (rackets, values) = (store.Rackets(Id), Values);
        var states = rackets.Select(r => r.State).ToList();
        Rackets = [.. rackets.Select(r => new Item(r, RacketShare.Of(r.State, states, values.SpareWeight), r.Work(Today, values)))];
        if (rackets is [var first, ..])
            Learned = LearnedRow.Of(first.History.Jobs, first.Sport, Saved.Hitting, values);
    }

    /// <summary>Whether a racket gets any of the play.</summary>
    public static bool IsInPlay(Item item) => item.Racket.State is RacketState.InTurn or RacketState.Spare;
}
