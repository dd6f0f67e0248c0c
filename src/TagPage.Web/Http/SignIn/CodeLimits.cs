using TagPage.Web.Http.Limits;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// How often a code may be tried by somebody who knows the password. Three codes in a million are good at a time, so 20 tries a day are hit
/// once in 45 years; a browser that has signed in before is counted by itself, so that nobody else's tries shut the owner out.
/// </summary>
public sealed class CodeLimits(TimeProvider clock)
{
    private readonly SlidingLimit _strangers = new(clock, 20, TimeSpan.FromDays(1));
    private readonly SlidingLimit _device = new(clock, 10, TimeSpan.FromMinutes(15));

    /// <summary>Takes one try.</summary>
    /// <param name="account">Whose code.</param>
    /// <param name="device">A device known for this account, see <see cref="KnownDevice"/>.</param>
    /// <returns>Zero where the try may go on, else how long to wait.</returns>
    public TimeSpan Take(string account, string? device)
    {
        var (limit, key) = device is null ? (_strangers, account) : (_device, device);
        return limit.TryTake(key) ? TimeSpan.Zero : limit.RetryAfter(key);
    }

    /// <summary>A good code costs no try. A known browser starts afresh; strangers are all one, so that none gets new tries by another’s coming in.</summary>
    public void Forgive(string account, string? device)
    {
        if (device is null)
            _strangers.GiveBack(account);
        else
            _device.Forget(device);
    }
}
