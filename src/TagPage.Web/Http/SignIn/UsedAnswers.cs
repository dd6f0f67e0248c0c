using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text.Json;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// Answers of passkeys that have signed in. What each had to answer to lies in a cookie, so that cookie and answer together would be
/// good again while the cookie is: Web Authentication (13.4.3) asks that no challenge be answered twice, and passkeys that are copied between devices do not count.
/// </summary>
public sealed class UsedAnswers(TimeProvider clock)
{
    /// <summary>Twice as long as a challenge is good for.</summary>
    private readonly SlidingLimit _used = new(clock, 1, TimeSpan.FromMinutes(10));

    /// <summary>False for an answer that was used before.</summary>
    /// <param name="credential">That was found good. By what the device has signed of it, which cannot be written in another way.</param>
    public bool TryUse(string credential)
    {
        using var answer = JsonDocument.Parse(credential);
        var signed = answer.RootElement.GetProperty("response").GetProperty("clientDataJSON").GetString()!;
        return _used.TryTake(Convert.ToHexString(SHA256.HashData(Base64Url.DecodeFromChars(signed))));
    }
}
