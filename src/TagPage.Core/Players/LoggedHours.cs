namespace TagPage.Core.Players;

/// <summary>Hours that somebody noted for one racket.</summary>
/// <param name="Day">When they were played.</param>
/// <param name="Hours">0 to <see cref="MostADay"/>; 0 says that the racket was not played with.</param>
public sealed record LoggedHours(DateOnly Day, double Hours)
{
    /// <summary>Most hours that one day can hold, all its entries together.</summary>
    public const int MostADay = 24;
}
