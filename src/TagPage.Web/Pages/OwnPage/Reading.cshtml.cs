using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Strings;
using TagPage.Records.OwnPages;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>The pitch of the strings, typed or heard by the browser. Only the number is sent; no sound ever is.</summary>
public sealed class ReadingModel(ClientOnFileStore clients, OwnPageRacketStore rackets, ReadingStore store) : OwnPageModel(clients)
{
    public sealed record Fields
    {
        public string? FormKey { get; init; }

        public string? Hertz { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public OwnPageRacket Racket { get; private set; } = new();

    public IReadOnlyList<Pitch> Pitches { get; private set; } = [];

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new Fields { FormKey = FormKey.New() };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!decimal.TryParse(Input.Hertz?.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hertz))
            return Unread();
        switch (store.Add(Myself, Racket.BedId!.Value, new ReadingEntry { FormKey = Input.FormKey ?? "", Value = hertz }))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused { Why: PitchUnlikely }:
                return Unread();
            case Outcome.Done:
                this.Say(Say.Play.ReadingSaved);
                break;
        }
        return Redirect(Link($"/my/reading/{id}"));
    }

    private PageResult Unread()
    {
        ModelState.AddModelError("Input.Hertz", Say.Play.HertzUnread);
        return Page();
    }

    /// <summary>Against the household's own first reading of these strings: other instruments cannot be compared with it.</summary>
    public string LossOf(Pitch pitch)
    {
        var loss = MeasuredLoss.Percent(ReadingScale.Hertz, Pitches[0].Value, pitch.Value);
        return ReferenceEquals(pitch, Pitches[0]) ? "–" : $"{Spoken.Language.Number(loss, 0)} %";
    }

    private bool Load(long id)
    {
        if (rackets.Get(Me.Id, id) is not { IsMine: true, BedId: { } bed, EndedOn: null } racket)
            return false;
        (Racket, Pitches) = (racket, store.Pitches(Myself, bed));
        HttpContext.Items[SecurityHeaders.Microphone] = true;
        return true;
    }
}
