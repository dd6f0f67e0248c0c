using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using TagPage.Records.Shop;
using TagPage.Records.Tags;

namespace TagPage.Web.Words;

/// <summary>
/// The calendar entry (RFC 5545) for the day a racket's strings should be replaced by. A racket has one, which new strings move
/// with its alarm. It names no person.
/// </summary>
public sealed record CalendarFile(TagView Racket, DateOnly Due, CalendarStore.Entry Entry, string Address, DateTimeOffset Now, TagWords Words)
{
    private const int WarnDaysBefore = 7;

    // An entry for a whole day begins at midnight, and an alarm counted from there would ring then.
    private static readonly TimeOnly WarnAt = new(9, 0);

    public string Write(ShopDetails shop)
    {
        var calendar = new Calendar { Method = "PUBLISH", ProductId = "-//TagPage//Restring by//EN" };
        calendar.Events.Add(Event(shop));
        return CalendarLines.Folded(new CalendarSerializer().SerializeToString(calendar)!);
    }

    private CalendarEvent Event(ShopDetails shop)
    {
        var entry = new CalendarEvent
        {
            Uid = Entry.Uid,
            DtStamp = new CalDateTime(Now.UtcDateTime, "UTC"),
            Sequence = Entry.Number,
            Start = new CalDateTime(Due),
            End = new CalDateTime(Due.AddDays(1)),
            Summary = Words.CalendarEntry(Racket),
            Description = string.Join('\n', new[] { shop.Name, shop.Phone is { } phone ? Phones.Shown(phone) : "", Address }.Where(l => l.Length > 0)),
            Url = new Uri(Address),
            Transparency = TransparencyType.Transparent,
        };
        if (Alarm(TimeZoneInfo.FindSystemTimeZoneById(shop.TimeZone)) is { } alarm)
            entry.Alarms.Add(new Alarm { Action = AlarmAction.Display, Trigger = At(alarm), Description = Words.CalendarEntry(Racket) });
        return entry;
    }

    // Without its type the library writes an empty trigger.
    private static Trigger At(DateTime instant)
    {
        var trigger = new Trigger { DateTime = new CalDateTime(instant, "UTC") };
        trigger.SetValueType("DATE-TIME");
        return trigger;
    }

    /// <summary>On the first morning to come by the shop's clock, from a week before on; null where the day has begun.</summary>
    private DateTime? Alarm(TimeZoneInfo zone)
    {
        for (var before = WarnDaysBefore; before >= 0; before--)
            if (zone.Next(Due.AddDays(-before).ToDateTime(WarnAt), Now) is { } at)
                return at.UtcDateTime;
        return null;
    }
}
