using System.Globalization;
using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;

namespace TagPage.Web.Http.SignIn;

/// <summary>Short notes that only this program can write and read, each for one purpose and for a while.</summary>
public sealed class SealedNotes(IDataProtectionProvider protection, TimeProvider clock)
{
    /// <param name="purpose">A note for another one is not read.</param>
    /// <param name="words">What it says; no line breaks.</param>
    public string Write(string purpose, params ReadOnlySpan<string> words) =>
        protection.CreateProtector(purpose).Protect(string.Join('\n', [.. words, clock.GetUtcNow().ToString("O", CultureInfo.InvariantCulture)]));

    /// <summary>What it says; null where it is none of ours, or older than it may be.</summary>
    public string[]? Read(string purpose, string? note, TimeSpan longest)
    {
        if (string.IsNullOrEmpty(note) || Open(purpose, note) is not [.. var words, var since])
            return null;
        return clock.GetUtcNow() - DateTimeOffset.Parse(since, CultureInfo.InvariantCulture) < longest ? words : null;
    }

    private string[]? Open(string purpose, string note)
    {
        try
        {
            return protection.CreateProtector(purpose).Unprotect(note).Split('\n');
        }
        catch (CryptographicException)
        {
            return null;
        }
    }
}
