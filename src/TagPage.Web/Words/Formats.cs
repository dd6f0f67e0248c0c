using System.Globalization;
using TagPage.Records.Shop;

namespace TagPage.Web.Words;

/// <summary>How values are written on English pages.</summary>
public static class Formats
{
    /// <summary>14 Mar 2027: nobody can take the day for the month.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    public static string Day(DateOnly? day) => day is { } known ? Day(known) : "–";

    /// <summary>14 Mar 2027; 14 Mar 2027 to 16 Mar 2027.</summary>
    public static string Days(DateOnly from, DateOnly to) => from == to ? Day(from) : $"{Day(from)} to {Day(to)}";

    public static string Weekday(DateOnly day) => $"{day.ToString("dddd", CultureInfo.InvariantCulture)}, {Day(day)}";

    /// <summary>9:00–12:30; a day that ends with midnight ends at 24:00.</summary>
    public static string Hours(DateTime from, DateTime to, string dash = "–") => string.Create(CultureInfo.InvariantCulture,
        $"{from:H:mm}{dash}{(to.TimeOfDay == TimeSpan.Zero ? "24:00" : to.ToString("H:mm", CultureInfo.InvariantCulture))}");

    /// <summary>At most <paramref name="decimals"/> places, none that are zero.</summary>
    public static string Number(decimal value, int decimals = 2) =>
        Math.Round(value, decimals).ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A string as it is asked for: Heron Spin 1.25.</summary>
    public static string StringName(string name, decimal gaugeMm) => Languages.English.StringName(name, gaugeMm);

    /// <summary>Mains before crosses in per cent, 10 / 5; one number where they are alike, null where there is none.</summary>
    public static string? PreStretch(int mains, int crosses) => (mains, crosses) switch
    {
        (0, 0) => null,
        _ when mains == crosses => $"{mains}",
        _ => $"{mains} / {crosses}",
    };

    /// <summary>Minor units to an amount with its currency: 2450 → £24.50. The shop reads English, and its clients their own language.</summary>
    /// <summary>"2 h 20 min".</summary>
    public static string Span(int minutes) => (minutes / 60, minutes % 60) switch
    {
        (0, var rest) => $"{rest} min",
        (var hours, 0) => $"{hours} h",
        var (hours, rest) => $"{hours} h {rest} min",
    };

    public static string Money(long minor, ShopDetails shop) => Money(minor, shop.Currency);

    public static string Money(long minor, string currency) => Languages.English.Money(minor, currency);

    public static string Amount(long minor, ShopDetails shop) => Amount(minor, shop.Currency);

    public static string Amount(long minor, string currency) =>
        Currencies.ToAmount(minor, currency).ToString("F" + Currencies.Places(currency), CultureInfo.InvariantCulture);

    /// <summary>The unit of a head size as it is stored: in2 or cm2.</summary>
    public static string AreaUnit(string? unit) => unit == "cm2" ? "cm²" : "in²";
}
