namespace TagPage.Core.Players;

/// <summary>Hours that somebody noted for one racket.</summary>
/// <param name="Day">When they were played.</param>
/// <param name="Hours">0 to <see cref="Most"/>; 0 says that the racket was not played with.</param>
public sealed record LoggedHours(DateOnly Day, double Hours)
{
    /// <summary>Most hours that one entry can hold.</summary>
    public const int Most = 200;

    /// <summary>Most hours that one day can hold.</summary>
    public const int MostADay = 24;
}
