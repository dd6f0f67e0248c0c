using TagPage.Core.Tags;

namespace TagPage.Web.Http.Limits;

/// <summary>
/// Counts wrong tag codes, so that nobody can read rackets by trying codes; docs/decisions.md has the calculation
/// behind the numbers. A source with too many is refused, and gets one look back every few seconds. When very many come in from
/// everywhere, only sources with a wrong one of their own are refused. A page that was opened from a source before stays
/// open to it: nobody can block the pages for the players behind the same address.
/// </summary>
public sealed class WrongCodes(TimeProvider clock)
{
    /// <summary>At once, and as many again spread over an hour.</summary>
    public const int MostOfASource = 300;

    /// <summary>A minute.</summary>
    public const int MostInAll = 600;

    private const string All = "all";

    private readonly SteadyLimit _ofSource = new(clock, MostOfASource, TimeSpan.FromHours(1));
    private readonly SlidingLimit _inAll = new(clock, MostInAll, TimeSpan.FromMinutes(1));
    private readonly OpenedPages _opened = new();

    /// <summary>A well-formed code that leads nowhere. Mistyped ones are free: anybody can see them from the check character.</summary>
    public void Count(string source)
    {
        _ofSource.Take(source);
        _inAll.TryTake(All);
    }

    /// <summary>A code that led to a page.</summary>
    public void Opened(string source, TagCode code) => _opened.Add(source, code);

    /// <summary>How long this source has to wait for this code; zero if it need not.</summary>
    public TimeSpan Wait(string source, TagCode? code = null)
    {
        var own = _ofSource.Wait(source);
        var wait = own > TimeSpan.Zero ? own : _inAll.IsSpent(All) && _ofSource.HasTaken(source) ? _inAll.RetryAfter(All) : TimeSpan.Zero;
        return wait > TimeSpan.Zero && code is { } known && _opened.Has(source, known) ? TimeSpan.Zero : wait;
    }
}
