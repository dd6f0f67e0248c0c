using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Strings;
using TagPage.Records.OwnPages;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>The pitch of the strings, typed or heard by the browser. Only the number is sent; no sound ever is.</summary>
public sealed class ReadingModel(ClientOnFileStore clients, OwnPageRacketStore rackets, ReadingStore store) : OwnRecordPage<OwnPageRacket>(clients)
{
    public sealed record Fields
    {
        public string? FormKey { get; init; }

        public string? Value { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public IReadOnlyList<Pitch> Pitches { get; private set; } = [];

    protected override OwnPageRacket? Find(long id)
    {
        if (rackets.Get(Me.Id, id) is not { IsMine: true, BedId: { } bed, EndedOn: null } racket)
            return null;
        Pitches = store.Pitches(Myself, bed);
        HttpContext.Items[SecurityHeaders.Microphone] = true;
        return racket;
    }

    public void OnGet() => Input = new Fields { FormKey = FormKey.New() };

    public IActionResult OnPost() => After(
        store.Add(Myself, Saved.BedId!.Value, new ReadingEntry { FormKey = Input.FormKey ?? "", Value = Hertz }),
        _ => GoOn($"/my/reading/{Id}", Say.Play.ReadingSaved));

    /// <summary>Zero, which no strings sound like, where it cannot be read.</summary>
    private decimal Hertz =>
        decimal.TryParse(Input.Value?.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hertz) ? hertz : 0;

    /// <summary>Against the household's own first reading of these strings: other instruments cannot be compared with it.</summary>
    public string LossOf(Pitch pitch)
    {
        var loss = MeasuredLoss.Percent(ReadingScale.Hertz, Pitches[0].Value, pitch.Value);
        return ReferenceEquals(pitch, Pitches[0]) ? "–" : $"{Spoken.Language.Number(loss, 0)} %";
    }
}
