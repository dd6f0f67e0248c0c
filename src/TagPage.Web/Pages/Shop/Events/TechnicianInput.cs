using System.ComponentModel.DataAnnotations;
using TagPage.Records.Events;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Events;

/// <summary>What the forms of a technician post.</summary>
public sealed record TechnicianInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the name.")]
    [StringLength(60, ErrorMessage = "Keep the name within 60 characters.")]
    public string? Name { get; init; }

    [StringLength(60, ErrorMessage = "Keep the machine within 60 characters.")]
    public string? Machine { get; init; }

    [Required(ErrorMessage = "Enter the hours.")]
    [StringLength(80, ErrorMessage = "Keep the hours within 80 characters.")]
    public string? Hours { get; init; }

    /// <summary>The days of an event that has several, in order.</summary>
    public IList<DayInput> Days { get; init; } = new List<DayInput>();

    public sealed record DayInput
    {
        public DateOnly Day { get; init; }

        [StringLength(80, ErrorMessage = "Keep the hours within 80 characters.")]
        public string? Hours { get; init; }
    }

    public TechnicianEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Name = Name!,
        Machine = Machine,
        Hours = Hours,
        Days = [.. Days.Select(day => new DayHours(day.Day, day.Hours))],
    };

    /// <summary>Nobody yet.</summary>
    public static TechnicianInput New(EventRow desk) => new()
    {
        FormKey = Records.Storage.FormKey.New(),
        Hours = "9:00-12:30, 13:00-18:00",
        Days = Several(desk, _ => null),
    };

    /// <summary>Every day is as the first one with any hours, and only what differs stands with its day.</summary>
    public static TechnicianInput Of(EventRow desk, TechnicianRow person)
    {
        var usual = desk.Days.Select(day => On(person, day, "-")).FirstOrDefault(hours => hours.Length > 0) ?? "";
        return new TechnicianInput
        {
            Name = person.Name,
            Machine = person.Machine,
            Hours = usual,
            Days = Several(desk, day => On(person, day, "-") is var hours && hours == usual ? null : hours.Length == 0 ? DayHours.Off : hours),
        };
    }

    private static List<DayInput> Several(EventRow desk, Func<DateOnly, string?> hours) =>
        desk.FromOn == desk.ToOn ? [] : [.. desk.Days.Select(day => new DayInput { Day = day, Hours = hours(day) })];

    /// <summary>Empty for a day off.</summary>
    public static string On(TechnicianRow person, DateOnly day, string dash = "–") =>
        string.Join(", ", person.Hours.Where(time => DateOnly.FromDateTime(time.From) == day).Select(time => Formats.Hours(time.From, time.To, dash)));
}
