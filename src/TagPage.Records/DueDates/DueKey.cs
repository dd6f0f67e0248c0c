using System.Globalization;

namespace TagPage.Records.DueDates;

/// <summary>A household's place in the due list: the earliest date among its rackets, then the client's number.</summary>
public sealed record DueKey(DateOnly Due, long ClientId)
{
    private const string Pattern = "yyyy-MM-dd";

    /// <summary>As written in an address; null for what cannot be read as one.</summary>
    public static DueKey? Read(string? text) =>
        text?.Split('.') is [var day, var client]
        && DateOnly.TryParseExact(day, Pattern, CultureInfo.InvariantCulture, DateTimeStyles.None, out var due)
        && long.TryParse(client, NumberStyles.None, CultureInfo.InvariantCulture, out var id)
            ? new DueKey(due, id)
            : null;

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Due.ToString(Pattern, CultureInfo.InvariantCulture)}.{ClientId}");
}
