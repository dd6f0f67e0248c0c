using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Hours and pauses; the racket's page shows the same card.</summary>
public sealed class PlayModel(ClientOnFileStore clients, OwnPageRacketStore rackets, PauseStore pauses, HoursStore hours, ShopClock clock)
    : OwnRecordPage<OwnPageRacket>(clients)
{
    /// <summary>Refused, while 0 says that it was not played with.</summary>
    private const decimal Unread = -1;

    public PlayCard Card { get; private set; } = default!;

    protected override OwnPageRacket? Find(long id)
    {
        if (rackets.Get(Me.Id, id) is not { IsMine: true } racket)
            return null;
        Card = PlayCard.Of(this, Myself, racket, rackets, pauses, hours);
        return racket;
    }

    public void OnGet()
    {
    }

    /// <summary>So many hours were played today.</summary>
    public IActionResult OnPostHours(string? hours, string? formKey) => Back(Add(hours, formKey), Say.Play.HoursSaved);

    /// <summary>Hours that were not played after all.</summary>
    public IActionResult OnPostTakeBack(long note) => Back(hours.Remove(Myself, note), Say.Play.Removed);

    /// <summary>The player does not play from today on.</summary>
    public IActionResult OnPostPause() => Back(pauses.Begin(Myself, Saved.PlayerId), Say.Play.PauseSaved);

    public IActionResult OnPostResume() => Back(pauses.End(Myself, Saved.PlayerId), Say.Play.ResumeSaved);

    private Outcome Add(string? typed, string? formKey) => hours.Add(Myself, Id, new HoursEntry
    {
        FormKey = formKey ?? "",
        PlayedOn = clock.Today,
        Hours = decimal.TryParse(typed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var read) ? read : Unread,
    });

    private IActionResult Back(Outcome outcome, string sentence) => After(outcome, _ => GoOn($"/my/rackets/{Id}", sentence));
}
