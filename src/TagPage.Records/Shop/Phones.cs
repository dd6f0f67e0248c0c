using PhoneNumbers;

namespace TagPage.Records.Shop;

/// <summary>Telephone numbers: kept as E.164, typed and shown in the ways people are used to. Parsing and formats by libphonenumber.</summary>
public static class Phones
{
    private static readonly PhoneNumberUtil Library = PhoneNumberUtil.GetInstance();

    /// <summary>The number as E.164, or null where the text cannot be one.</summary>
    /// <param name="typed">Any spelling, with or without country code.</param>
    /// <param name="country">ISO 3166-1 alpha-2 of the shop, for numbers without a country code.</param>
    public static string? Read(string? typed, string country)
    {
        if (string.IsNullOrWhiteSpace(typed) || typed.Length > 40)
            return null;
        try
        {
            var number = Library.Parse(typed, country);
            return IsWhole(number) ? Library.Format(number, PhoneNumberFormat.E164) : null;
        }
        catch (NumberParseException)
        {
            return null;
        }
    }

    /// <summary>
    /// Possible, not valid: new ranges are given out before any list knows them. What is dialled within a town only is no number, and
    /// neither is one whose zero for calls within the country could not be told from it, but where zeros belong to numbers.
    /// </summary>
    private static bool IsWhole(PhoneNumber number) =>
        Library.IsPossibleNumberWithReason(number) == PhoneNumberUtil.ValidationResult.IS_POSSIBLE && (!Library.GetNationalSignificantNumber(number).StartsWith('0') || Library.IsValidNumber(number));

    /// <summary>For people anywhere: +44 20 7946 0958.</summary>
    public static string Shown(string e164) => Library.Format(Library.Parse(e164, null), PhoneNumberFormat.INTERNATIONAL);

    /// <summary>The address of a Call button (RFC 3966).</summary>
    public static string CallUri(string e164) => Library.Format(Library.Parse(e164, null), PhoneNumberFormat.RFC3966);
}
