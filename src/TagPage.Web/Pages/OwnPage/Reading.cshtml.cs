using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Strings;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>The pitch of the strings, typed or heard by the browser. Only the number is sent; no sound ever is.</summary>
public sealed class ReadingModel(ClientOnFileStore clients, OwnPageRacketStore rackets, ReadingStore store, UsualStore usual) : OwnRecordPage<OwnPageRacket>(clients)
{
    public sealed record Fields
    {
        public string? FormKey { get; init; }

        public string? Value { get; init; }

        /// <summary>The number that was asked about before, and is meant when it is sent again.</summary>
        public string? Confirmed { get; init; }
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

    /// <summary>The number that is asked about.</summary>
    public string? Asked { get; private set; }

    public IActionResult OnPost()
    {
        if (!ReadingRules.PitchFaults(Hertz).Any() && Input.Confirmed != Text(Hertz) && usual.OfPhones(Id, Hertz, nameof(Input.Value)) is { } far)
            return Ask(far);
        return After(store.Add(Myself, Saved.BedId!.Value, new ReadingEntry { FormKey = Input.FormKey ?? "", Value = Hertz }),
            _ => GoOn($"/my/reading/{Id}", Say.Play.ReadingSaved));
    }

    private PageResult Ask(ReadingFar far)
    {
        Asked = Text(Hertz);
        ModelState.AddModelError("Input." + far.Place, Say.Play.HertzFar.Fill(("value", Spoken.Language.Number(far.Value, 1)), ("usual", Spoken.Language.Number(far.Usual, 1))));
        return Page();
    }

    private static string Text(decimal hertz) => hertz.ToString(CultureInfo.InvariantCulture);

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
