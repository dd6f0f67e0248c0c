using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Events;

/// <summary>What one player, or one country or club, has to pay; to be printed.</summary>
public sealed class BillModel(EventStore events, DayStore days, ShopStore shops) : RecordPage<EventRow>
{
    [BindProperty(SupportsGet = true, Name = "player")]
    public long? Player { get; set; }

    [BindProperty(SupportsGet = true, Name = "team")]
    public string? Team { get; set; }

    public DaySheet Sheet { get; private set; } = default!;

    public string For => Team ?? Sheet.Rackets[0].Player;

    protected override EventRow? Find(long id) => events.Get(Who.Shop, id);

    public IActionResult OnGet()
    {
        var rackets = (days.Get(Who.Shop, Id, null) ?? [])
            .Where(entry => entry.State != JobState.Cancelled && (Team is not null ? entry.Team == Team : entry.PlayerId == Player)).ToList();
        Sheet = new DaySheet(rackets, shops.Get());
        return rackets.Count == 0 ? NotFound() : Page();
    }
}
