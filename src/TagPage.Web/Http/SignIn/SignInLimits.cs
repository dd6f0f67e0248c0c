using TagPage.Web.Http.Limits;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// How often a password may be tried. A browser that has signed in before is counted by itself alone, so that nobody
/// else's tries can shut the owner out.
/// </summary>
public sealed class SignInLimits(TimeProvider clock)
{
    private readonly SlidingLimit _source = new(clock, 30, TimeSpan.FromMinutes(15));
    private readonly SlidingLimit _accountAndSource = new(clock, 10, TimeSpan.FromMinutes(15));
    private readonly SlidingLimit _account = new(clock, 100, TimeSpan.FromHours(1));
    private readonly SlidingLimit _device = new(clock, 10, TimeSpan.FromMinutes(15));

    /// <summary>How long to wait for the next try; zero where it may be taken now.</summary>
    public TimeSpan Wait(string account, string source, string? device) => device is not null
        ? _device.RetryAfter(device)
        : new[] { _source.RetryAfter(source), _accountAndSource.RetryAfter(Pair(account, source)), _account.RetryAfter(account) }.Max();

    /// <summary>Takes one try.</summary>
    /// <param name="account">The normalised name, known or not.</param>
    /// <param name="source">See <see cref="Source"/>.</param>
    /// <param name="device">A device known for this account, see <see cref="KnownDevice"/>.</param>
    /// <returns>Zero where the try may go on, else how long to wait.</returns>
    public TimeSpan Take(string account, string source, string? device)
    {
        if (device is not null)
            return Take(_device, device);
        // In this order a source that is refused does not use up the account's tries.
        var wait = Take(_source, source);
        if (wait == TimeSpan.Zero)
            wait = Take(_accountAndSource, Pair(account, source));
        return wait == TimeSpan.Zero ? Take(_account, account) : wait;
    }

    /// <summary>Whoever knew the password starts afresh.</summary>
    public void Forgive(string account, string source, string? device)
    {
        _accountAndSource.Forget(Pair(account, source));
        if (device is not null)
            _device.Forget(device);
    }

    private static TimeSpan Take(SlidingLimit limit, string key) => limit.TryTake(key) ? TimeSpan.Zero : limit.RetryAfter(key);

    private static string Pair(string account, string source) => account + "\n" + source;
}
