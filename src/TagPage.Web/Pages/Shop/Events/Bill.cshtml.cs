using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Events;

/// <summary>What one player, or one country or club, has to pay: written as a bill, and paid.</summary>
public sealed class BillModel(EventStore events, DayStore days, EventBillStore bills, ShopStore shops) : RecordPage<EventRow>
{
    public long? Player { get; private set; }

    public string? Team { get; private set; }

    /// <summary>Of the form for a bill alone; the buttons that pay send nothing of it.</summary>
    public BillInput Input { get; private set; } = new();

    public DaySheet Sheet { get; private set; } = default!;

    public string For => Team ?? Sheet.Rackets[0].Player;

    /// <summary>Countries or clubs of what a player's own bill leaves out unless it is asked for.</summary>
    public IReadOnlyList<string> Teams => Team is null ? DaySheet.Teams(Unbilled) : [];

    /// <summary>Strung, with a price, and on no bill.</summary>
    public IReadOnlyList<EntryRow> Unbilled => [.. Sheet.Done.Where(entry => entry.PriceMinor > 0 && Sheet.BillOf(entry) is null)];

    /// <summary>The page itself.</summary>
    public string Address => $"/shop/events/bill/{Id}{(Team is not null ? QueryString.Create("team", Team) : QueryString.Create("player", $"{Player}"))}";

    private EventParty Whose => Team is not null ? EventParty.Of(Team) : EventParty.Player(Player ?? 0);

    protected override EventRow? Find(long id)
    {
        if (events.Get(User.AtShop(), id) is not { } desk)
            return null;
        var team = Request.Query["team"] is [{ Length: > 0 } typed] ? TeamName.KeyOf(typed) : null;
        Player = long.TryParse(Request.Query["player"], System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var player) ? player : null;
        var rackets = (days.Get(User.AtShop(), id, null) ?? [])
            .Where(entry => entry.State != JobState.Cancelled && (team is not null ? entry.Team.Length > 0 && TeamName.KeyOf(entry.Team) == team : entry.PlayerId == Player)).ToList();
        Team = team is null ? null : TeamName.Usual(rackets.Select(entry => entry.Team));
        Sheet = new DaySheet(rackets, shops.Get(), bills.Of(User.AtShop(), id));
        return rackets.Count == 0 ? null : desk;
    }

    public void OnGet() => Input = new BillInput { FormKey = FormKey.New(), ToName = Team ?? bills.PayerOf(User.AtShop(), Id, Player ?? 0) };

    public IActionResult OnPost([Bind(Prefix = nameof(Input))] BillInput typed)
    {
        Input = typed;
        return ModelState.IsValid
            ? this.After(bills.Make(User.AtShop(), Id, Input.ToEntry(Whose)), id => this.GoOn($"/shop/money/bill/{id}", "The bill is written."))
            : Page();
    }

    public IActionResult OnPostPaid(PaymentMethod? how) => ModelState.IsValid && how is PaymentMethod.Cash or PaymentMethod.Card or PaymentMethod.Transfer
        ? this.After(bills.Pay(User.AtShop(), Id, Whose, how.Value), rackets => this.GoOn(Address, rackets == 1 ? "One racket is paid." : $"{rackets} rackets are paid."))
        : NotFound();
}
