using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Players;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Hours of other days than today, one or several at once.</summary>
public sealed class HoursModel(ClientOnFileStore clients, OwnPageRacketStore rackets, HoursStore store, ShopClock clock) : OwnRecordPage<OwnPageRacket>(clients)
{
    public sealed record Fields
    {
        public string FormKey { get; init; } = "";
        public string? PlayedOn { get; init; }
        public string? LastDay { get; init; }
        public string? Hours { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    protected override OwnPageRacket? Find(long id) => rackets.Get(Me.Id, id) is { IsMine: true } racket ? racket : null;

    public void OnGet()
    {
        var today = DayField.Of(clock.Today);
        Input = new Fields { PlayedOn = today, LastDay = today };
    }

    public IActionResult OnPost() => Read() is { } entry
        ? After(store.Add(Myself, Id, entry), _ => GoOn($"/my/rackets/{Id}", Say.Play.HoursSaved))
        : Page();

    /// <summary>Null where something cannot be read, which its field then says.</summary>
    private HoursEntry? Read()
    {
        var (from, to) = (DayField.Read(Input.PlayedOn), DayField.Read(Input.LastDay));
        var read = decimal.TryParse(Input.Hours?.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hours);
        if (from is null)
            Refuse(new DaysUnlikely(HoursEntry.MostDays) { Field = nameof(Input.PlayedOn) });
        if (to is null)
            Refuse(new DaysUnlikely(HoursEntry.MostDays));
        if (!read)
            Refuse(new HoursUnlikely(LoggedHours.MostADay));
        return from is { } first && to is { } last && read
            ? new HoursEntry { FormKey = Input.FormKey, PlayedOn = first, LastDay = last, Hours = hours }
            : null;
    }
}
