namespace TagPage.Core.Forecast;

/// <summary>When a date counts as near: in its last days or in the last part of the interval, whichever is shorter.</summary>
public sealed record DueSoonValues
{
    /// <summary>The last so many days.</summary>
    public int Days { get; init; } = 14;

    /// <summary>The last one in so many of the days from stringing to the date: 3 is the last third.</summary>
    public int LastOneIn { get; init; } = 3;
}
