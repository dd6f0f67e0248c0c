using System.Globalization;
using PhoneNumbers;

namespace TagPage.Records.Shop;

/// <summary>The countries a shop can be in: those whose telephone numbers libphonenumber knows, named by the system's locale data.</summary>
public static class Countries
{
    private static readonly HashSet<string> WithPhones = PhoneNumberUtil.GetInstance().GetSupportedRegions();

    /// <summary>Code is ISO 3166-1 alpha-2, Currency ISO 4217; in order of the English names.</summary>
    public static IReadOnlyList<(string Code, string Name, string Currency)> All { get; } =
        [.. CultureInfo.GetCultures(CultureTypes.SpecificCultures)
            .Select(c => new RegionInfo(c.Name))
            .DistinctBy(r => r.TwoLetterISORegionName)
            .Where(r => WithPhones.Contains(r.TwoLetterISORegionName))
            .Select(r => (r.TwoLetterISORegionName, r.EnglishName, r.ISOCurrencySymbol))
            .OrderBy(c => c.EnglishName, StringComparer.Ordinal)];

    /// <summary>What the machine is set to, or null where it does not say.</summary>
    public static string? OfThisMachine
    {
        get
        {
            var code = CultureInfo.CurrentCulture.IsNeutralCulture || CultureInfo.CurrentCulture.Name.Length == 0
                ? null
                : RegionInfo.CurrentRegion.TwoLetterISORegionName;
            return All.Any(c => c.Code == code) ? code : null;
        }
    }
}
