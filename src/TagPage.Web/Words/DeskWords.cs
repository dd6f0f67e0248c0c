using System.Globalization;
using TagPage.Core.EventDesk;
using TagPage.Core.Jobs;
using TagPage.Records.Events;
using TagPage.Records.Shop;

namespace TagPage.Web.Words;

/// <summary>How a desk writes times, strings and how a racket stands.</summary>
public static class DeskWords
{
    /// <summary>14:20.</summary>
    public static string Clock(DateTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>14:20; on another day than today with its day.</summary>
    public static string Time(DateTime? time, DateTime now) => time switch
    {
        null => "–",
        { } at when at.Date == now.Date => Clock(at),
        { } at => at.ToString("d MMM HH:mm", CultureInfo.InvariantCulture),
    };

    /// <summary>For the big screen, where there is no room for more: 14:20, or Sun for another day.</summary>
    public static string BoardTime(DateTime? time, DateTime now) =>
        time is { } at && at.Date != now.Date ? at.ToString("ddd", CultureInfo.InvariantCulture) : Time(time, now);

    public static string Tension(EntryRow entry) => entry.MainsTension == entry.CrossesTension
        ? $"{Formats.Number(entry.MainsTension)} {EnglishNames.Of(entry.TensionUnit)}"
        : $"{Formats.Number(entry.MainsTension)} / {Formats.Number(entry.CrossesTension)} {EnglishNames.Of(entry.TensionUnit)}";

    public static string Strings(EntryRow entry) => entry.IsHybrid
        ? $"{Formats.StringName(entry.MainsName, entry.MainsGaugeMm)} / {Formats.StringName(entry.CrossesName, entry.CrossesGaugeMm)}"
        : Formats.StringName(entry.MainsName, entry.MainsGaugeMm);

    /// <summary>Whose strings they are.</summary>
    public static string From(EntryRow entry) => (entry.MainsSuppliedBy, entry.CrossesSuppliedBy) switch
    {
        (Supplier.Client, Supplier.Client) => "the player’s own",
        (Supplier.Shop, Supplier.Shop) => "from the desk",
        (Supplier.Client, _) => "mains the player’s own, crosses from the desk",
        _ => "mains from the desk, crosses the player’s own",
    };

    /// <summary>What a racket costs by whose strings they are; null where the event has no two prices.</summary>
    public static string? Prices(EventRow desk, ShopDetails shop) => desk is { PriceOwnMinor: { } own, PriceDeskMinor: { } ours }
        ? $"{Formats.Money(own, shop)} with the player’s, {Formats.Money(ours, shop)} with the desk’s"
        : null;

    /// <summary>Whose racket comes in: a helper reads of a junior what a guardian agreed to, or the number they have here.</summary>
    public static string Player(bool isHelper, bool junior, string name, string agreedName, int? number) =>
        !isHelper || !junior ? name
        : agreedName.Length > 0 ? agreedName
        : number is { } known ? $"Player of number {known}"
        : "A junior";

    /// <summary>Null where nothing presses.</summary>
    public static (string Word, string Look)? Of(Pressure pressure) => pressure switch
    {
        Pressure.Late => ("late", "over"),
        Pressure.Tight => ("close", "soon"),
        _ => null,
    };

    public static string Of(JobState state) => state switch
    {
        JobState.Waiting => "waiting",
        JobState.OnMachine => "on a machine",
        JobState.Strung => "ready",
        JobState.Collected => "handed out",
        _ => "withdrawn",
    };

    /// <summary>One racket's slip: number 7, promised for 14:20, would be ready at 14:40.</summary>
    public static string Of(Slip slip, DateTime now) => slip.After is { } after
        ? $"Number {slip.Number}, promised for {Time(slip.Due, now)}, would be ready at {Time(after, now)}."
        : $"Number {slip.Number}, promised for {Time(slip.Due, now)}, would not be strung in the hours that are left.";
}
