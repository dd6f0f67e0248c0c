using System.ComponentModel.DataAnnotations;
using TagPage.Core.Units;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What the form about the shop itself posts.</summary>
public sealed record ShopInput : IValidatableObject
{
    public int Version { get; init; }

    [Required(ErrorMessage = "Enter the shop’s name as your clients know it.")]
    [StringLength(80, ErrorMessage = "Keep the shop’s name within 80 characters.")]
    public string? Name { get; init; }

    [StringLength(40, ErrorMessage = "Keep the number within 40 characters.")]
    public string? Phone { get; init; }

    [MailAddress]
    public string? Mail { get; init; }

    [StringLength(100, ErrorMessage = "Keep the street within 100 characters.")]
    public string? Street { get; init; }

    [StringLength(100, ErrorMessage = "Keep the town within 100 characters.")]
    public string? Town { get; init; }

    public string? Country { get; init; }

    [StringLength(500, ErrorMessage = "Keep the opening hours within 500 characters.")]
    [DataType(DataType.MultilineText)]
    public string? OpeningHours { get; init; }

    public string? Language { get; init; }

    public string? NamesIn { get; init; }

    public bool ByLastWord { get; init; }

    public string? TimeZone { get; init; }

    public string? Currency { get; init; }

    /// <summary>What the form asked about and the owner confirmed.</summary>
    public string? Confirmed { get; init; }

    public TensionUnit TensionUnit { get; init; }

    [Required(ErrorMessage = "Enter a number of months.")]
    [Range(1, 120, ErrorMessage = "Enter a number of months between 1 and 120.")]
    public int? UnseenMonths { get; init; }

    public static ShopInput Of(ShopDetails shop) => new()
    {
        Version = shop.Version,
        Name = shop.Name,
        Phone = shop.Phone is { } phone ? Phones.Shown(phone) : null,
        Mail = shop.Mail,
        Street = shop.Street,
        Town = shop.Town,
        Country = shop.Country,
        OpeningHours = shop.OpeningHours,
        Language = shop.Language,
        NamesIn = shop.NamesIn,
        ByLastWord = shop.ByLastWord,
        TimeZone = shop.TimeZone,
        Currency = shop.Currency,
        TensionUnit = shop.TensionUnit,
        UnseenMonths = shop.UnseenMonths,
    };

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        var knowsCountry = Countries.All.Any(c => c.Code == Country);
        if (!knowsCountry)
            yield return new("Choose a country from the list.", [nameof(Country)]);
        if (knowsCountry && Phone is not null && Phones.Read(Phone, Country!) is null)
            yield return new("This does not look like a phone number. Enter it with its area code, or with + and the country code.", [nameof(Phone)]);
        if (Languages.Of(Language) is null)
            yield return new("Choose a language from the list.", [nameof(Language)]);
        if (NamesIn is not null && NameLanguages.All.All(l => l.Code != NamesIn))
            yield return new("Choose a language from the list.", [nameof(NamesIn)]);
        if (!TimeZones.All.Contains(TimeZone))
            yield return new("Choose a time zone from the list.", [nameof(TimeZone)]);
        if (!Currencies.All.Contains(Currency))
            yield return new("Choose a currency from the list.", [nameof(Currency)]);
    }

    public ShopEntry ToEntry() => new()
    {
        Version = Version,
        Name = Name!,
        Phone = Phone,
        Mail = Mail,
        Street = Street,
        Town = Town,
        Country = Country,
        OpeningHours = OpeningHours,
        Language = Language!,
        NamesIn = NamesIn,
        ByLastWord = ByLastWord,
        TimeZone = TimeZone,
        Currency = Currency,
        TensionUnit = TensionUnit,
        UnseenMonths = UnseenMonths!.Value,
    };
}
