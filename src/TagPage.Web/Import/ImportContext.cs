using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Web.Csv;
using TagPage.Web.Words;

namespace TagPage.Web.Import;

/// <summary>What the sheets need to know while they are read, and where they put what they find.</summary>
/// <param name="Shop">Country, currency and units of this shop.</param>
/// <param name="Today">Nothing that has happened may lie after this day.</param>
/// <param name="Batch">Gets the rows.</param>
/// <param name="Problems">Gets what stops the import.</param>
/// <param name="Notices">Gets what is worth a second look but stops nothing.</param>
public sealed record ImportContext(ShopDetails Shop, DateOnly Today, ImportBatch Batch, Problems Problems, Problems Notices)
{
    /// <summary>Jobs strung before this day count as collected and paid; null for none.</summary>
    public DateOnly? SettledBefore { get; init; }

    private readonly Dictionary<string, int> _lines = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The line that brought the same thing, like "ticket 1703", before; null for the first.</summary>
    public int? LineBefore(SheetRow row, string thing) => _lines.TryAdd(thing, row.Line) ? null : _lines[thing];

    /// <summary>A telephone number as E.164.</summary>
    public string? Phone(SheetRow row, Column<string> column)
    {
        if (row.Get(column) is not { } typed)
            return null;
        var number = Phones.Read(typed, Shop.Country);
        if (number is null)
            row.Refuse(column, "Enter a phone number with all its digits. A number from another country begins with + and the country’s code.");
        return number;
    }

    /// <summary>A day on which something has happened.</summary>
    public DateOnly? Past(SheetRow row, Column<DateOnly?> column)
    {
        var day = row.Get(column);
        if (day > Today)
            row.Refuse(column, $"This day is in the future; today is {Formats.Day(Today)}. Enter the day it happened.");
        return day;
    }

    /// <summary>An amount of the shop's currency in minor units.</summary>
    public long? Money(SheetRow row, Column<decimal?> column)
    {
        if (row.Get(column) is not { } amount)
            return null;
        var places = Currencies.Places(Shop.Currency);
        var minor = amount * (decimal)Math.Pow(10, places);
        if (minor != Math.Floor(minor))
            row.Refuse(column, places == 0 ? $"{Shop.Currency} has no decimal places." : $"{Shop.Currency} has {places} decimal places.");
        return (long)minor;
    }
}
