using System.ComponentModel.DataAnnotations;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What the form with the opening hours posts: a line of times for each weekday, empty for closed.</summary>
public sealed record HoursInput : IValidatableObject
{
    private const int Longest = 60;
    private const string TooLong = "Keep the times within 60 characters.";

    public int Version { get; init; }

    [StringLength(Longest, ErrorMessage = TooLong)]
    public string? Monday { get; init; }

    [StringLength(Longest, ErrorMessage = TooLong)]
    public string? Tuesday { get; init; }

    [StringLength(Longest, ErrorMessage = TooLong)]
    public string? Wednesday { get; init; }

    [StringLength(Longest, ErrorMessage = TooLong)]
    public string? Thursday { get; init; }

    [StringLength(Longest, ErrorMessage = TooLong)]
    public string? Friday { get; init; }

    [StringLength(Longest, ErrorMessage = TooLong)]
    public string? Saturday { get; init; }

    [StringLength(Longest, ErrorMessage = TooLong)]
    public string? Sunday { get; init; }

    private IReadOnlyList<(string Name, string? Typed)> Days =>
    [
        (nameof(Monday), Monday),
        (nameof(Tuesday), Tuesday),
        (nameof(Wednesday), Wednesday),
        (nameof(Thursday), Thursday),
        (nameof(Friday), Friday),
        (nameof(Saturday), Saturday),
        (nameof(Sunday), Sunday),
    ];

    public static HoursInput Of(ShopDetails shop)
    {
        string On(int weekday) => OpeningTimes.Write(shop.Opening.On(weekday));
        return new HoursInput
        {
            Version = shop.Version,
            Monday = On(1),
            Tuesday = On(2),
            Wednesday = On(3),
            Thursday = On(4),
            Friday = On(5),
            Saturday = On(6),
            Sunday = On(7),
        };
    }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext) =>
        from day in Days.Select((day, index) => (day.Name, Times: OpeningTimes.Read(index + 1, day.Typed)))
        where day.Times is null
        select new ValidationResult("Enter times like 10:00–13:00, 14:00–18:00, in their order and on a clock of 24 hours. Leave it empty for closed.", [day.Name]);

    public OpeningEntry ToEntry() => new() { Version = Version, Week = [.. Days.SelectMany((day, index) => OpeningTimes.Read(index + 1, day.Typed)!)] };
}
