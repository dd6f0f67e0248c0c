using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Forecast;
using TagPage.Core.Strings;
using TagPage.Records.Jobs;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>What the date would be with other strings, another rule or more play. Nothing is saved.</summary>
public sealed class WhatIfModel(CardStore cards, StringPickStore strings, ShopStore shops, ShopClock clock)
    : RecordPage<CardStore.Card>
{
    [BindProperty(SupportsGet = true)]
    public WhatIfInput Input { get; set; } = new();

    public IReadOnlyList<StringPickStore.Choice> Strings { get; private set; } = [];

    /// <summary>As it is, without the shop's own date.</summary>
    public RestringBy Now { get; private set; } = new() { State = RestringState.NotStrungYet };

    /// <summary>As it would be; null as long as nothing is supposed.</summary>
    public RestringBy? Then { get; private set; }

    protected override CardStore.Card? Find(long id) => cards.Get(id);

    public void OnGet()
    {
        Strings = strings.Choices([]);
        var (today, values) = (clock.Today, shops.Get().StartingValues);
        Now = Saved.WhatIf(today, values);
        if (ModelState.IsValid && !Input.IsEmpty)
            Then = Saved.WhatIf(today, values, Supposed);
    }

    private ForecastInput Supposed(ForecastInput input) => input with
    {
        Bed = SupposedBed(input.Bed),
        Rule = Input.Rule ?? input.Rule,
        EveryWeeks = Input.EveryWeeks ?? input.EveryWeeks,
        Play = input.Play with { TimesAWeek = Input.TimesAWeek ?? input.Play.TimesAWeek, HoursATime = Input.HoursATime ?? input.Play.HoursATime },
    };

    private Bed? SupposedBed(Bed? bed)
    {
        var other = Strings.FirstOrDefault(s => s.Id == Input.StringId) is { } chosen ? Bed.Of(new BedString(chosen.Material, chosen.GaugeMm)) : bed;
        return other is not null && Input.GaugeMm is { } gauge
            ? new Bed(other.Mains with { GaugeMm = gauge }, other.Crosses with { GaugeMm = gauge })
            : other;
    }
}
