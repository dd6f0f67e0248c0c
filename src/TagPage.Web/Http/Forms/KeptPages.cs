using System.Buffers.Text;
using System.Security.Cryptography;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// Pages that answer a form, as they were made, for the browser that sent it: half an hour at most, a
/// few megabytes in all, the oldest go first. They are in memory alone.
/// </summary>
public sealed class KeptPages(TimeProvider clock)
{
    private const int MostOfOne = 256 * 1024;
    private const int MostInAll = 8 * 1024 * 1024;
    private const int KeyBytes = 16;

    private static readonly TimeSpan MostAge = TimeSpan.FromMinutes(30);

    private readonly Lock _turn = new();
    private readonly Dictionary<string, Page> _pages = [];
    private readonly Queue<string> _oldest = [];
    private int _bytes;

    /// <param name="For">Whose it is, and at which address.</param>
    /// <param name="Body">The page.</param>
    /// <param name="Items">What the response's headers hang on.</param>
    /// <param name="At">When it was made.</param>
    public sealed record Page(string For, byte[] Body, IReadOnlyList<KeyValuePair<object, object?>> Items, DateTimeOffset At);

    /// <summary>The key it is found under; null where it is too large to keep.</summary>
    public string? Put(string whose, byte[] body, IReadOnlyList<KeyValuePair<object, object?>> items)
    {
        if (body.Length > MostOfOne)
            return null;
        var key = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(KeyBytes));
        lock (_turn)
        {
            _pages[key] = new Page(whose, body, items, clock.GetUtcNow());
            _oldest.Enqueue(key);
            _bytes += body.Length;
            while (_bytes > MostInAll || IsOld(_pages[_oldest.Peek()]))
                if (_pages.Remove(_oldest.Dequeue(), out var gone))
                    _bytes -= gone.Body.Length;
        }
        return key;
    }

    public Page? Find(string key, string whose)
    {
        lock (_turn)
            return _pages.TryGetValue(key, out var page) && page.For == whose && !IsOld(page) ? page : null;
    }

    private bool IsOld(Page page) => clock.GetUtcNow() - page.At > MostAge;
}
