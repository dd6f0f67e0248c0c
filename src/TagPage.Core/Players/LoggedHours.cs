namespace TagPage.Core.Players;

/// <summary>Hours that somebody noted for one racket.</summary>
/// <param name="Day">When they were played, or the last day of the time they were played in.</param>
/// <param name="Hours">More than 0, at most <see cref="Most"/>.</param>
public sealed record LoggedHours(DateOnly Day, double Hours)
{
    /// <summary>Most hours that one entry can hold.</summary>
    public const int Most = 200;

    /// <summary>Most hours that one day can hold.</summary>
    public const int MostADay = 24;
}
