using System.ComponentModel.DataAnnotations;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Records.Players;

namespace TagPage.Web.Pages.Shop.Players;

/// <summary>What the player forms post.</summary>
public sealed record PlayerInput : IValidatableObject
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter the player’s name.")]
    [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
    public string? Name { get; init; }

    public bool Junior { get; init; }

    [Range(0.0, Play.MaxTimesAWeek, ErrorMessage = "Enter 0 to 21 times a week.")]
    public decimal? TimesAWeek { get; init; }

    [Range(0.0, Play.MaxHoursATime, ErrorMessage = "Enter 0 to 8 hours.")]
    public decimal? HoursATime { get; init; }

    [Required(ErrorMessage = "Choose how hard the player is on strings.")]
    public Hitting? Hitting { get; init; } = TagPage.Core.Players.Hitting.Average;

    public RestringRule? Rule { get; init; }

    [Range(EveryWeeksLimit.MinWeeks, EveryWeeksLimit.MaxWeeks, ErrorMessage = "Enter 1 to 104 weeks.")]
    public int? EveryWeeks { get; init; }

    [StringLength(1000, ErrorMessage = "Keep the note within 1,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Rule == RestringRule.EveryWeeks && EveryWeeks is null)
            yield return new ValidationResult("Enter the number of weeks.", [nameof(EveryWeeks)]);
    }

    public PlayerEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Name = Name!,
        Junior = Junior,
        TimesAWeek = TimesAWeek,
        HoursATime = HoursATime,
        Hitting = Hitting!.Value,
        Rule = Rule,
        EveryWeeks = EveryWeeks,
        Note = Note,
    };
}
