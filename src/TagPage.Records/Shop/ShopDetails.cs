using TagPage.Core.Customising;
using TagPage.Core.Forecast;
using TagPage.Core.Units;

namespace TagPage.Records.Shop;

/// <summary>The shop itself: who it is, where, and how it works.</summary>
public sealed record ShopDetails
{
    public string Name { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }
    public string Street { get; init; } = "";
    public string Town { get; init; } = "";

    /// <summary>ISO 3166-1 alpha-2; numbers typed without a country code are read as this country's.</summary>
    public string Country { get; init; } = "GB";

    /// <summary>When it is open, as days and times.</summary>
    public Opening Opening { get; init; } = Opening.Unknown;

    /// <summary>What days and times do not say, in the owner's words.</summary>
    public string OpeningHours { get; init; } = "";
    public string HomeMarkdown { get; init; } = "";

    /// <summary>ISO 639-1: what the owner writes opening hours, page and care guides in.</summary>
    public string Language { get; init; } = "en";

    /// <summary>ISO 639-1: the language whose order names stand in; null for the one above.</summary>
    public string? NamesIn { get; init; }

    /// <summary>People stand by the last word of their name, as a family name, instead of by the name as written.</summary>
    public bool ByLastWord { get; init; }

    /// <summary>#RRGGBB in capitals, or null for the product's own.</summary>
    public string? Accent { get; init; }

    /// <summary>IANA name.</summary>
    public string TimeZone { get; init; } = "Etc/UTC";

    /// <summary>ISO 4217.</summary>
    public string Currency { get; init; } = "GBP";

    public TensionUnit TensionUnit { get; init; }

    /// <summary>Clients not seen for this many months are left out of the due list.</summary>
    public int UnseenMonths { get; init; } = 12;

    /// <summary>No second reminder to a household within so many days, unless the owner insists.</summary>
    public int DaysBetweenReminders { get; init; } = 14;

    public OwnWords Reminder { get; init; } = new();
    public OwnWords ReminderSms { get; init; } = new();

    /// <summary>"Ready to collect".</summary>
    public OwnWords Ready { get; init; } = new();

    /// <summary>"We have your request".</summary>
    public OwnWords Received { get; init; } = new();

    /// <summary>What goes around the news about a lost racket.</summary>
    public OwnWords Notice { get; init; } = new();

    /// <summary>Reminders to many at once are held back between these hours of the shop's clock; the same hour twice for never.</summary>
    public int QuietFromHour { get; init; } = 20;
    public int QuietUntilHour { get; init; } = 8;

    /// <summary>The bench shows how long the racket on the machine has taken.</summary>
    public bool BenchTimer { get; init; }

    /// <summary>Single keys move about in lists and act.</summary>
    public bool SingleKeys { get; init; } = true;

    /// <summary>Whoever helps signs in with more than a password.</summary>
    public bool HelpersSecondStep { get; init; }

    public StartingValues StartingValues { get; init; } = new();

    public CustomisingValues CustomisingValues { get; init; } = new();

    public int Version { get; init; }
}
