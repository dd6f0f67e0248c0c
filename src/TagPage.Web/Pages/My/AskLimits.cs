using TagPage.Web.Limits;

namespace TagPage.Web.Pages.My;

/// <summary>How often a link may be asked for. Whoever asks too often for one address gets the same answer, and nothing happens.</summary>
public sealed class AskLimits(TimeProvider clock)
{
    public const int MostOfASource = 10, MostOfAnAddress = 3;

    private readonly SlidingLimit _source = new(clock, MostOfASource, TimeSpan.FromHours(1));
    private readonly SlidingLimit _address = new(clock, MostOfAnAddress, TimeSpan.FromHours(1));

    /// <summary>How long the source has to wait; zero where it may ask.</summary>
    public TimeSpan Wait(string source) => _source.RetryAfter(source);

    public bool TryTake(string source, string address) => _source.TryTake(source) && _address.TryTake(address);
}
