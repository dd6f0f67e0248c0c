using System.ComponentModel.DataAnnotations;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Strings;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>What to suppose; whatever is empty stays as it is.</summary>
public sealed record WhatIfInput
{
    public long? StringId { get; init; }

    [Range((double)BedString.MinGaugeMm, (double)BedString.MaxGaugeMm, ErrorMessage = "Enter a diameter between 0.5 and 2 mm.")]
    public decimal? GaugeMm { get; init; }

    public RestringRule? Rule { get; init; }

    [Range(EveryWeeksLimit.MinWeeks, EveryWeeksLimit.MaxWeeks, ErrorMessage = "Enter 1 to 104 weeks.")]
    public int? EveryWeeks { get; init; }

    [Range(0.0, Play.MaxTimesAWeek, ErrorMessage = "Enter 0 to 21 times a week.")]
    public decimal? TimesAWeek { get; init; }

    [Range(0.0, Play.MaxHoursATime, ErrorMessage = "Enter 0 to 8 hours.")]
    public decimal? HoursATime { get; init; }

    public bool IsEmpty => this == new WhatIfInput();
}
