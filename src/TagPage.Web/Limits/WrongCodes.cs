namespace TagPage.Web.Limits;

/// <summary>
/// Counts wrong tag codes, so that nobody reads rackets by trying codes. A source with too many is refused for every
/// code. When very many come in from everywhere, only sources with a wrong one of their own are refused: nobody can
/// switch the pages off for the players.
/// </summary>
public sealed class WrongCodes(TimeProvider clock)
{
    public const int MostOfASource = 20;
    public const int MostInAll = 600;

    private const string All = "all";

    private readonly SlidingLimit _ofSource = new(clock, MostOfASource, TimeSpan.FromHours(1));
    private readonly SlidingLimit _inAll = new(clock, MostInAll, TimeSpan.FromMinutes(1));

    /// <summary>A well-formed code that leads nowhere. Mistyped ones are free: their check character says so to everybody.</summary>
    public void Count(string source)
    {
        _ofSource.TryTake(source);
        _inAll.TryTake(All);
    }

    /// <summary>How long this source has to wait; zero where it is welcome.</summary>
    public TimeSpan Wait(string source)
    {
        var own = _ofSource.RetryAfter(source);
        if (own > TimeSpan.Zero)
            return own;
        return _inAll.IsSpent(All) && _ofSource.Count(source) > 0 ? _inAll.RetryAfter(All) : TimeSpan.Zero;
    }
}
