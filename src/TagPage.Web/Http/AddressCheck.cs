using System.Net;
using System.Security.Cryptography;
using System.Text;
using TagPage.Records.Shop;

namespace TagPage.Web.Http;

/// <summary>
/// Calls an address and says whether this very program answers there: it asks /healthz/this for the proof of a number drawn
/// for this one call, which only the key of this process can make; a process that serves nobody asks /healthz/live. Only these
/// two paths of that one address are asked, for the owner only; no redirect is followed, and nothing of the answer is shown but what kind it is, so that the program cannot be
/// used to read what its machine can reach.
/// </summary>
public sealed class AddressCheck
{
    private const string Path = "/healthz/this";
    private const int AskLength = 32;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(8), ForConnecting = TimeSpan.FromSeconds(5);

    private readonly byte[] _key = RandomNumberGenerator.GetBytes(32);

    /// <summary>What only this process can answer; null for anything that it would not ask itself.</summary>
    public string? Proof(string? ask) => ask is { Length: AskLength } && ask.All(char.IsAsciiHexDigitLower)
        ? Convert.ToHexStringLower(HMACSHA256.HashData(_key, Encoding.ASCII.GetBytes(ask)))
        : null;

    /// <param name="address">Without a trailing slash.</param>
    /// <param name="cancel">When nobody waits for it any more.</param>
    public Task<AddressAnswer> Call(string address, CancellationToken cancel)
    {
        var ask = RandomNumberGenerator.GetHexString(AskLength, lowercase: true);
        return Call(new Uri($"{address}{Path}?ask={ask}"), Proof(ask)!, cancel);
    }

    /// <summary>The same from a process that serves nobody: whether some program of this kind answers there, which one it cannot know.</summary>
    public Task<AddressAnswer> CallAny(string address, CancellationToken cancel) => Call(new Uri(address + "/healthz/live"), "Healthy", cancel);

    private static async Task<AddressAnswer> Call(Uri address, string expected, CancellationToken cancel)
    {
        using var client = Client();
        try
        {
            using var answer = await client.GetAsync(address, cancel);
            return (int)answer.StatusCode is >= 300 and < 400 ? AddressAnswer.Redirected
                : answer.StatusCode == HttpStatusCode.OK && await answer.Content.ReadAsStringAsync(cancel) == expected ? AddressAnswer.ThisProgram
                : AddressAnswer.AnotherProgram;
        }
        catch (HttpRequestException e)
        {
            return Kind(e.HttpRequestError);
        }
        catch (OperationCanceledException) when (!cancel.IsCancellationRequested)
        {
            return AddressAnswer.TooSlow;
        }
    }

    private static HttpClient Client() => new(new SocketsHttpHandler
    {
        AllowAutoRedirect = false,
        UseCookies = false,
        UseProxy = false,
        ConnectTimeout = ForConnecting,
    })
    {
        Timeout = Patience,
        // Bytes: the proof has 64, and whatever is longer is somebody else's.
        MaxResponseContentBufferSize = 1000,
    };

    private static AddressAnswer Kind(HttpRequestError error) => error switch
    {
        HttpRequestError.NameResolutionError => AddressAnswer.UnknownName,
        HttpRequestError.SecureConnectionError => AddressAnswer.NotTrusted,
        HttpRequestError.ConnectionError => AddressAnswer.NoConnection,
        _ => AddressAnswer.AnotherProgram,
    };
}
