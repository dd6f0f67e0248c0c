using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>shop.csv: one setting a line, for a shop that does not exist yet.</summary>
internal static class ShopSheet
{
    public const string File = "shop.csv";

    private static readonly Column<string> Setting = new("setting", Kinds.Line(40), "The setting’s name.") { Needed = true };
    private static readonly Column<string> Value = new("value", Kinds.Note(1000), "What it is set to.");

    public static Sheet Sheet { get; } = new(File, "The shop itself.", [Setting, Value]);

    private sealed record Found(ShopDetails Shop, string? Phone = null, DateOnly? AsOf = null);

    private static CellKind<string> Zone { get; } = new("a time zone", text =>
        TimeZoneInfo.TryFindSystemTimeZoneById(text, out _)
            ? new Cell<string>(text, null)
            : Kinds.Wrong<string>("Enter the time zone’s IANA name, like Europe/London."));

    private static Func<Found, string, Cell<Found>> Open(int weekday) => Set(
        new CellKind<IReadOnlyList<OpeningSpan>>("opening times", text => OpeningTimes.Read(weekday, text) is { } times
            ? new Cell<IReadOnlyList<OpeningSpan>>(times, null)
            : Kinds.Wrong<IReadOnlyList<OpeningSpan>>("Enter times like 10:00-13:00, 14:00-18:00.")),
        (f, v) => f with { Shop = f.Shop with { Opening = f.Shop.Opening with { Week = [.. f.Shop.Opening.Week, .. v] } } });

    private static readonly Dictionary<string, Func<Found, string, Cell<Found>>> Settings = new()
    {
        ["name"] = Set(Kinds.Line(80), (f, v) => f with { Shop = f.Shop with { Name = v } }),
        ["phone"] = Set(Kinds.Line(40), (f, v) => f with { Phone = v }),
        ["mail"] = Set(CellKinds.Mail, (f, v) => f with { Shop = f.Shop with { Mail = v } }),
        ["street"] = Set(Kinds.Line(80), (f, v) => f with { Shop = f.Shop with { Street = v } }),
        ["town"] = Set(Kinds.Line(80), (f, v) => f with { Shop = f.Shop with { Town = v } }),
        ["country"] = Set(Letters(2, "a country as two letters, like GB"), (f, v) => f with { Shop = f.Shop with { Country = v } }),
        ["opening_hours"] = Set(Kinds.Note(500), (f, v) => f with { Shop = f.Shop with { OpeningHours = v } }),
        ["open_monday"] = Open(1),
        ["open_tuesday"] = Open(2),
        ["open_wednesday"] = Open(3),
        ["open_thursday"] = Open(4),
        ["open_friday"] = Open(5),
        ["open_saturday"] = Open(6),
        ["open_sunday"] = Open(7),
        ["language"] = Set(CellKinds.Language, (f, v) => f with { Shop = f.Shop with { Language = v } }),
        ["time_zone"] = Set(Zone, (f, v) => f with { Shop = f.Shop with { TimeZone = v } }),
        ["currency"] = Set(Letters(3, "a currency as three letters, like GBP"), (f, v) => f with { Shop = f.Shop with { Currency = v } }),
        ["tension_unit"] = Set(Kinds.OneOf<TensionUnit>(), (f, v) => f with { Shop = f.Shop with { TensionUnit = v!.Value } }),
        ["as_of"] = Set(Kinds.Day, (f, v) => f with { AsOf = v }),
    };

    /// <summary>The shop as the file describes it, with the day it was written for in the batch.</summary>
    public static ShopDetails Read(byte[] bytes, ImportBatch batch, Problems problems)
    {
        var found = new Found(new ShopDetails());
        var seen = new HashSet<string>();
        SheetRow? phoneRow = null;
        foreach (var row in SheetReader.Read(Sheet, bytes, problems))
        {
            var name = Names.Plain(row.Get(Setting) ?? "");
            if (name == "phone")
                phoneRow = row;
            found = Apply(row, name, found, seen);
        }
        batch.AsOf = found.AsOf;
        if (found.Shop.Name.Length == 0 && problems.Count == 0)
            problems.Add(File, "The shop has no name. Add a line: name,Your shop");
        return found.Shop with { Phone = Phone(found, phoneRow) };
    }

    private static Found Apply(SheetRow row, string name, Found found, HashSet<string> seen)
    {
        if (name.Length == 0)
            return found;
        if (!Settings.TryGetValue(name, out var set))
            row.Refuse(Setting, $"This setting is unknown. Known settings: {string.Join(", ", Settings.Keys)}.");
        else if (!seen.Add(name))
            row.Refuse(Setting, "This setting is here twice. Remove one of them.");
        else if (row.Get(Value) is { } text)
        {
            var cell = set(found, text);
            if (cell.Wrong is null)
                return cell.Value!;
            row.Refuse(Value, cell.Wrong);
        }
        return found;
    }

    /// <summary>Read last, since it needs the country.</summary>
    private static string? Phone(Found found, SheetRow? row)
    {
        if (found.Phone is null)
            return null;
        var number = Phones.Read(found.Phone, found.Shop.Country);
        if (number is null)
            row!.Refuse(Value, "Enter a phone number with all its digits.");
        return number;
    }

    private static Func<Found, string, Cell<Found>> Set<T>(CellKind<T> kind, Func<Found, T, Found> with) => (found, text) =>
    {
        var cell = kind.Read(text);
        return cell.Wrong is null ? new Cell<Found>(with(found, cell.Value!), null) : Kinds.Wrong<Found>(cell.Wrong);
    };

    private static CellKind<string> Letters(int count, string takes) => new(takes, text =>
        text.Length == count && text.All(char.IsAsciiLetter) ? new Cell<string>(text.ToUpperInvariant(), null) : Kinds.Wrong<string>($"Enter {takes}."));
}
