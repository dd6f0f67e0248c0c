using System.Globalization;
using TagPage.Core.Jobs;
using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Web.Csv;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Events;

/// <summary>What a day, or a whole event, came to.</summary>
/// <param name="Rackets">By desk number; withdrawn ones among them.</param>
/// <param name="Shop">Whose currency prices are in.</param>
/// <param name="Billed">Which of the event's rackets stand on which bill.</param>
public sealed record DaySheet(IReadOnlyList<EntryRow> Rackets, ShopDetails Shop, IReadOnlyList<EventBillStore.Billed> Billed)
{
    /// <summary>Null where it stands on none.</summary>
    public EventBillStore.Billed? BillOf(EntryRow entry) => Billed.FirstOrDefault(billed => billed.Number == entry.Number);

    public int Strung => Done.Count();

    /// <summary>What is strung. Nothing else is billed.</summary>
    public IEnumerable<EntryRow> Done => Rackets.Where(entry => entry.IsStrung);

    /// <summary>Minutes on the machine of those that were timed.</summary>
    public double? AverageMinutes => Done.Select(Minutes).OfType<int>().DefaultIfEmpty(-1).Average() is >= 0 and var average ? average : null;

    public IReadOnlyList<EntryRow> Late => [.. Done.Where(entry => MinutesLate(entry) > 0)];

    public IReadOnlyList<EntryRow> Uncollected => [.. Rackets.Where(entry => entry.State == JobState.Strung)];

    public IReadOnlyList<EntryRow> Unstrung => [.. Rackets.Where(entry => entry.IsOpen)];

    public long Total => Done.Sum(entry => entry.PriceMinor ?? 0);

    public long Unpaid => Done.Sum(entry => entry.OpenMinor);

    /// <summary>Strings that were used, each with how many beds took it and how many of those came from the desk; half a bed for each of a hybrid.</summary>
    public IEnumerable<(string String, decimal Beds, decimal FromDesk)> Strings =>
        Done.SelectMany(entry => entry.IsHybrid || entry.MainsSuppliedBy != entry.CrossesSuppliedBy
                ? [(Name: Formats.StringName(entry.MainsName, entry.MainsGaugeMm), Beds: 0.5m, Desk: entry.MainsSuppliedBy == Supplier.Shop),
                    (Formats.StringName(entry.CrossesName, entry.CrossesGaugeMm), 0.5m, entry.CrossesSuppliedBy == Supplier.Shop)]
                : new[] { (Name: Formats.StringName(entry.MainsName, entry.MainsGaugeMm), Beds: 1m, Desk: entry.MainsSuppliedBy == Supplier.Shop) })
            .GroupBy(used => used.Name)
            .Select(used => (used.Key, used.Sum(one => one.Beds), used.Where(one => one.Desk).Sum(one => one.Beds)))
            .OrderBy(used => used.Key, StringComparer.OrdinalIgnoreCase);

    /// <summary>By player, or by country or club.</summary>
    public IEnumerable<(string Key, string Name, IReadOnlyList<EntryRow> Rackets, long Total, long Unpaid)> Bills(bool byTeam) =>
        Done.Where(entry => !byTeam || entry.Team.Length > 0)
            .GroupBy(entry => byTeam ? TeamName.KeyOf(entry.Team) : Text(entry.PlayerId))
            .Select(bill => (Name: byTeam ? TeamName.Usual(bill.Select(entry => entry.Team))! : bill.First().Player, Rackets: (IReadOnlyList<EntryRow>)[.. bill], bill.Key))
            .OrderBy(bill => bill.Name, StringComparer.CurrentCultureIgnoreCase)
            .Select(bill => (byTeam ? bill.Name : bill.Key, bill.Name, bill.Rackets, bill.Rackets.Sum(entry => entry.PriceMinor ?? 0), bill.Rackets.Sum(entry => entry.OpenMinor)));

    /// <summary>Bills that rackets stand on, and what is to be billed yet: by whom it is billed.</summary>
    public (IReadOnlyList<EventBillStore.Billed> Written, int Open, IReadOnlyList<string> Teams) Written(IReadOnlyList<EntryRow> rackets)
    {
        var open = rackets.Where(entry => entry.PriceMinor > 0 && BillOf(entry) is null).ToList();
        return ([.. rackets.Select(BillOf).OfType<EventBillStore.Billed>().DistinctBy(billed => billed.BillId)], open.Count, Teams(open));
    }

    /// <summary>Countries and clubs of some rackets, each once.</summary>
    public static IReadOnlyList<string> Teams(IReadOnlyList<EntryRow> rackets) =>
        [.. rackets.Select(entry => entry.Team).Where(team => team.Length > 0).GroupBy(TeamName.KeyOf).Select(team => TeamName.Usual(team)!)];

    public static int? Minutes(EntryRow entry) => entry is { StartedAt: { } started, StrungAt: { } strung } ? (int)(strung - started).TotalMinutes : null;

    /// <summary>Above zero for too late; null where nothing was promised or it is not strung.</summary>
    public static int? MinutesLate(EntryRow entry) =>
        entry.StrungAt is { } strung && (entry.NeededBy ?? entry.Promised) is { } need ? (int)(strung - need).TotalMinutes : null;

    /// <summary>A line a racket, as RFC 4180 has it.</summary>
    public string Csv() => string.Concat(Lines().Select(cells => string.Join(',', cells.Select(Cell)) + "\r\n"));

    private IEnumerable<string[]> Lines() =>
    [
        ["number", "player", "team", "ticket", "mains", "crosses", "tension", "came", "needed_by", "promised", "started", "strung", "handed_out", "strung_by", "minutes", "minutes_late", "price", "paid_on", "state"],
        .. Rackets.Select(entry => (string[])
        [
            Text(entry.Number), entry.Player, entry.Team, Text(entry.Ticket), Formats.StringName(entry.MainsName, entry.MainsGaugeMm), Formats.StringName(entry.CrossesName, entry.CrossesGaugeMm),
            $"{Formats.Number(entry.MainsTension)} / {Formats.Number(entry.CrossesTension)} {EnglishNames.Of(entry.TensionUnit)}",
            At(entry.CameAt), At(entry.NeededBy), At(entry.Promised), At(entry.StartedAt), At(entry.StrungAt), At(entry.HandedAt), entry.StrungBy,
            Text(Minutes(entry)), Text(MinutesLate(entry)), entry.PriceMinor is { } price ? Formats.Amount(price, Shop) : "", entry.PaidOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "", entry.State.ToString(),
        ]),
    ];

    private static string Text(long? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";

    private static string At(DateTime? time) => time?.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) ?? "";

    private static string Cell(string text)
    {
        var guarded = FormulaGuard.Guard(text);
        return guarded.AsSpan().IndexOfAny(",\"\r\n;") < 0 ? guarded : $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
