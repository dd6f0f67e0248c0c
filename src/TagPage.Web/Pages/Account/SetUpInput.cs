using System.ComponentModel.DataAnnotations;
using TagPage.Core.Units;
using TagPage.Records.Accounts;
using TagPage.Records.Shop;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Account;

/// <summary>What the set-up form posts.</summary>
public sealed record SetUpInput : IValidatableObject
{
    [Required(ErrorMessage = "Enter the shop’s name as your clients know it.")]
    [StringLength(80, ErrorMessage = "Keep the shop’s name within 80 characters.")]
    public string? ShopName { get; init; }

    [Required(ErrorMessage = "Enter a name to sign in with.")]
    [StringLength(AccountLimits.Name, MinimumLength = 2, ErrorMessage = "Use 2 to 60 characters.")]
    [RegularExpression(@"[^\s].*", ErrorMessage = "Write the name on one line.")]
    public string? Name { get; init; }

    [Required(ErrorMessage = "Enter a password.")]
    [StringLength(AccountLimits.Password, ErrorMessage = "Keep the password within 200 characters.")]
    public string? Password { get; init; }

    [Required(ErrorMessage = "Choose the country whose phone numbers you write without a country code.")]
    public string? Country { get; init; }

    [Required(ErrorMessage = "Choose the time zone of the shop.")]
    public string? TimeZone { get; init; }

    [Required(ErrorMessage = "Choose the currency of your prices.")]
    public string? Currency { get; init; }

    public TensionUnit TensionUnit { get; init; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (!Countries.All.Any(c => c.Code == Country))
            yield return new("Choose a country from the list.", [nameof(Country)]);
        if (!TimeZones.All.Contains(TimeZone))
            yield return new("Choose a time zone from the list.", [nameof(TimeZone)]);
        if (!Currencies.All.Contains(Currency))
            yield return new("Choose a currency from the list.", [nameof(Currency)]);
    }

    public SetUpEntry ToEntry() => new()
    {
        ShopName = ShopName!,
        Name = Name!,
        Password = Password!,
        Country = Country!,
        TimeZone = TimeZone!,
        Currency = Currency!,
        TensionUnit = TensionUnit,
    };
}
