namespace TagPage.Core.Forecast;

/// <summary>
/// The date the owner set by hand. It overrules everything, but only for the strings it was set for:
/// a date from before these strings went in is left over from earlier ones and has no say.
/// </summary>
public sealed record OwnersDateLimit : LimitDay
{
    private OwnersDateLimit(DateOnly day, DateOnly strung) : base(LimitKind.OwnersDate, day, strung)
    {
    }

    /// <summary>Whether the date is from before these strings went in.</summary>
    public bool IsLeftOver => Day < Strung;

    internal static OwnersDateLimit? Of(ForecastInput input, DateOnly strung) =>
        input.OwnersDate is { } day ? new OwnersDateLimit(day, strung) : null;
}
