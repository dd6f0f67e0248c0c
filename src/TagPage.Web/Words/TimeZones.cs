namespace TagPage.Web.Words;

/// <summary>The time zones this machine knows, by their IANA names.</summary>
public static class TimeZones
{
    public static IReadOnlyList<string> All { get; } =
        [.. TimeZoneInfo.GetSystemTimeZones().Select(z => Iana(z.Id)).OfType<string>().Append("Etc/UTC").Distinct().Order(StringComparer.Ordinal)];

    /// <summary>What the machine is set to, or null where it does not say.</summary>
    public static string? OfThisMachine => Iana(TimeZoneInfo.Local.Id) is { } zone && All.Contains(zone) ? zone : null;

    private static string? Iana(string id) =>
        TimeZoneInfo.TryConvertWindowsIdToIanaId(id, out var iana) ? iana : id.Contains('/', StringComparison.Ordinal) ? id : null;
}
