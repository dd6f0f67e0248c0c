using System.Globalization;
using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>
/// An event as the files that a shop brings records in from. Its tickets are numbered anew, each by its desk number, so that the
/// same event gives the same files whenever it is asked.
/// </summary>
public static class EventFiles
{
    private const int LongestPlace = 60;

    /// <summary>Each file's name with its text.</summary>
    /// <param name="desk">The event.</param>
    /// <param name="rackets">What was strung there.</param>
    /// <param name="firstTicket">The ticket of desk number 1.</param>
    /// <param name="shop">Whose currency prices are in.</param>
    public static IReadOnlyList<(string Name, string Text)> Of(EventRow desk, IReadOnlyList<(EntryRow Entry, EventHomeStore.Row Beside)> rackets, int firstTicket, ShopDetails shop) =>
    [
        ("clients.csv", SheetText.Write(["client", "name", "phone", "mail", "language", "reminders", "note"], rackets.DistinctBy(racket => racket.Beside.ClientId)
            .Select(racket => (object?[])[$"C{racket.Beside.ClientId}", racket.Beside.Client, racket.Beside.Phone, racket.Beside.Mail, racket.Beside.Language, Said(racket.Beside.Reminders), desk.Name]))),
        ("players.csv", SheetText.Write(["player", "client", "name", "junior"], rackets.DistinctBy(racket => racket.Entry.PlayerId)
            .Select(racket => (object?[])[$"P{racket.Entry.PlayerId}", $"C{racket.Beside.ClientId}", racket.Entry.Player, Said(racket.Entry.Junior)]))),
        ("strings.csv", SheetText.Write(["string", "name", "material", "gauge_mm"], Strings(rackets))),
        ("rackets.csv", SheetText.Write(["racket", "player", "number", "state", "sport", "frame", "tape_colour"], rackets.DistinctBy(racket => racket.Entry.RacketId)
            .Select(racket => (object?[])[$"R{racket.Entry.RacketId}", $"P{racket.Entry.PlayerId}", racket.Entry.RacketNumber, racket.Beside.RacketState, racket.Entry.Sport, racket.Entry.Frame, racket.Entry.TapeColour]))),
        ("jobs.csv", SheetText.Write(
            ["ticket", "racket", "state", "mains_string", "crosses_string", "mains_supplied_by", "crosses_supplied_by", "mains_tension", "crosses_tension", "tension_unit",
                "mains_pre_stretch_percent", "crosses_pre_stretch_percent", "pieces", "received_on", "received_where", "strung_on", "strung_by", "machine", "collected_on",
                "price", "paid_on", "paid_how", "note"],
            rackets.Select(racket => Job(desk, racket.Entry, racket.Beside, firstTicket, shop)))),
    ];

    private static IEnumerable<object?[]> Strings(IReadOnlyList<(EntryRow Entry, EventHomeStore.Row Beside)> rackets) => rackets
        .SelectMany(racket => (object?[][])
        [
            [$"S{racket.Entry.MainsId}", racket.Entry.MainsName, racket.Beside.MainsMaterial, racket.Entry.MainsGaugeMm],
            [$"S{racket.Entry.CrossesId}", racket.Entry.CrossesName, racket.Beside.CrossesMaterial, racket.Entry.CrossesGaugeMm],
        ])
        .DistinctBy(line => line[0]);

    private static object?[] Job(EventRow desk, EntryRow entry, EventHomeStore.Row beside, int firstTicket, ShopDetails shop) =>
    [
        firstTicket + entry.Number - 1, $"R{entry.RacketId}", entry.State, $"S{entry.MainsId}", $"S{entry.CrossesId}", entry.MainsSuppliedBy, entry.CrossesSuppliedBy,
        entry.MainsTension, entry.CrossesTension, entry.TensionUnit, entry.MainsPreStretch, entry.CrossesPreStretch, entry.Pieces, Day(beside.ReceivedOn),
        desk.Name[..Math.Min(desk.Name.Length, LongestPlace)], Day(beside.StrungOn), entry.StrungBy, beside.Machine, Day(beside.CollectedOn),
        entry.PriceMinor is { } price ? Currencies.ToAmount(price, shop.Currency) : null, Day(entry.PaidOn), entry.PaidOn is null ? null : beside.PaidHow,
        string.Join(", ", new[] { $"no. {entry.Number}", entry.Team, Stencil(entry), entry.Note }.Where(part => part.Length > 0)),
    ];

    private static string Stencil(EntryRow entry) =>
        entry.Stencil.Length + entry.StencilColour.Length == 0 ? "" : $"stencil {string.Join(", ", new[] { entry.Stencil, entry.StencilColour }.Where(part => part.Length > 0))}";

    private static string Said(bool so) => so ? "yes" : "no";

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
