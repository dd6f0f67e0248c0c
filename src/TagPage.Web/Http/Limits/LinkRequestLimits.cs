namespace TagPage.Web.Http.Limits;

/// <summary>
/// How often a link may be asked for. Whoever asks too often for one address gets the same answer, and nothing happens:
/// it must not be told whether the address is on file.
/// </summary>
public sealed class LinkRequestLimits(TimeProvider clock)
{
    /// <summary>An hour. A club's whole network is one source.</summary>
    public const int MostOfASource = 30;

    public const int MostOfASourceADay = 100;

    /// <summary>An hour.</summary>
    public const int MostOfAnAddress = 3;

    public const int MostOfAnAddressADay = 6;

    private readonly SlidingLimit _source = new(clock, MostOfASource, TimeSpan.FromHours(1));
    private readonly SlidingLimit _sourceADay = new(clock, MostOfASourceADay, TimeSpan.FromDays(1));
    private readonly SlidingLimit _address = new(clock, MostOfAnAddress, TimeSpan.FromHours(1));
    private readonly SlidingLimit _addressADay = new(clock, MostOfAnAddressADay, TimeSpan.FromDays(1));

    /// <summary>How long the source has to wait; zero where it may ask.</summary>
    public TimeSpan Wait(string source) => TimeSpan.FromTicks(Math.Max(_source.RetryAfter(source).Ticks, _sourceADay.RetryAfter(source).Ticks));

    public bool TryTake(string source, string address) =>
        _source.TryTake(source) && _sourceADay.TryTake(source) && !_addressADay.IsSpent(address) && _address.TryTake(address) && _addressADay.TryTake(address);
}
