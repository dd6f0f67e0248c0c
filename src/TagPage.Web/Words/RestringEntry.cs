using System.Security.Cryptography;
using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using TagPage.Records.Shop;
using TagPage.Records.Tags;

namespace TagPage.Web.Words;

/// <summary>The calendar entry (RFC 5545) for the day a racket's strings should be replaced by. It names no person.</summary>
public sealed record RestringEntry(TagView Racket, DateOnly Due, StringingRow Strung, string Address, DateTimeOffset Now, TagWords Words)
{
    private const int WarnDaysBefore = 7;

    public string Write(ShopDetails shop)
    {
        var calendar = new Calendar { Method = "PUBLISH", ProductId = "-//TagPage//Restring by//EN" };
        calendar.Events.Add(Event(shop));
        return new CalendarSerializer().SerializeToString(calendar)!;
    }

    private CalendarEvent Event(ShopDetails shop)
    {
        var entry = new CalendarEvent
        {
            Uid = Uid(),
            DtStamp = new CalDateTime(Now.UtcDateTime, "UTC"),
            Sequence = Sequence(),
            Start = new CalDateTime(Due),
            End = new CalDateTime(Due.AddDays(1)),
            Summary = Words.CalendarEntry(Racket),
            Description = string.Join('\n', new[] { shop.Name, shop.Phone is { } phone ? Phones.Shown(phone) : "", Address }.Where(l => l.Length > 0)),
            Url = new Uri(Address),
            Transparency = TransparencyType.Transparent,
        };
        if (Racket.DaysLeft > WarnDaysBefore)
            entry.Alarms.Add(new Alarm { Action = AlarmAction.Display, Trigger = new Trigger(Duration.FromDays(-WarnDaysBefore)), Description = Words.CalendarEntry(Racket) });
        return entry;
    }

    /// <summary>The same for these strings in this racket however often it is asked for, so that a calendar keeps one entry.</summary>
    private string Uid() => new Guid(SHA256.HashData(Encoding.ASCII.GetBytes($"{Racket.Code}/{Strung.JobId}")).AsSpan(0, 16)).ToString();

    /// <summary>
    /// A calendar takes a changed date only under a higher number. What changes a date is not counted in one place, but
    /// time goes on: minutes since the stringing day.
    /// </summary>
    private int Sequence() =>
        (int)Math.Max(0, (Now - new DateTimeOffset(Strung.StrungOn.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero)).TotalMinutes);
}
