using System.ComponentModel.DataAnnotations;
using TagPage.Records.Shop;

namespace TagPage.Web.Http.Forms;

/// <summary>A phone number in any spelling, read as the shop's country if it has no country code. Empty passes.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class PhoneNumberAttribute : ValidationAttribute
{
    private const string Sentence = "This does not look like a phone number. Enter it with its area code, or with + and the country code.";

    protected override ValidationResult? IsValid(object? value, ValidationContext validationContext)
    {
        if (value is not string { Length: > 0 } typed)
            return ValidationResult.Success;
        var country = validationContext.GetRequiredService<ShopStore>().Get().Country;
        return Phones.Read(typed, country) is null ? new ValidationResult(Sentence) : ValidationResult.Success;
    }
}
