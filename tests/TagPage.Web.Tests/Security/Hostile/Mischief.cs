using System.Globalization;
using System.Text;

namespace TagPage.Web.Tests.Security.Hostile;

/// <summary>What somebody who wants to break a page might send, drawn from one seed.</summary>
internal sealed class Mischief(int seed)
{
    private static readonly string[] Known =
    [
        "%00", "%ED%A0%80", "%FF%FE", "%C0%AF", "%E2%80%AE", "%0D%0AX-Evil:1", "%F0%9F%98%80", "%", "%zz", "..%2F..%2F", "[", "]", "{0}", "%7B%7B", "<script>", "'--", "\"", "%27 OR 1=1", "$%7Bx%7D",
        "9223372036854775807", "-9223372036854775808", "2147483648", "-1", "0", "1", "2", "1e400", "NaN", "0x10", "1,5", "1.5", "%D9%A1", "true", "null", "2026-02-30", "0001-01-01", "9999-12-31",
        "9999-12-31T23:59:59Z", "24:00", "-0", "%20", "+", "a%40b", "%2B440000000000", "https://%5B", "data:,x", "en-x-%00", "*", "%25", ";", "%3D",
    ];

    private static readonly string[] Headers =
        ["Accept-Language", "If-None-Match", "If-Modified-Since", "Range", "X-Forwarded-For", "X-Forwarded-Proto", "Origin", "Referer", "User-Agent", "Accept", "Accept-Encoding", "Sec-Fetch-Site", "Cookie", "Forwarded"];

    private static readonly string[] Types =
        ["application/x-www-form-urlencoded", "application/x-www-form-urlencoded", "application/x-www-form-urlencoded", "multipart/form-data; boundary=b", "application/json", "text/plain", "application/x-www-form-urlencoded; charset=x", ""];

    private readonly Random _random = new(seed);

    public bool Maybe(int oneIn) => _random.Next(oneIn) == 0;

    public T Pick<T>(IReadOnlyList<T> from) => from[_random.Next(from.Count)];

    /// <summary>As in an address or a form: percent-encoded where need be.</summary>
    public string Value() => _random.Next(6) switch
    {
        0 => string.Concat(Enumerable.Range(0, _random.Next(1, 12)).Select(_ => $"%{_random.Next(256):X2}")),
        1 => Pick(Known) + Pick(Known),
        2 => string.Concat(Enumerable.Repeat(Pick(Known), _random.Next(1, 400))),
        3 => _random.NextInt64(long.MinValue, long.MaxValue).ToString(CultureInfo.InvariantCulture),
        _ => Pick(Known),
    };

    /// <summary>Fields of a page, some left out, some twice, some under a name that is none.</summary>
    public string Fields(IReadOnlyList<string> names) => string.Join('&', names.Where(_ => !Maybe(4)).SelectMany(name => Maybe(12) ? [$"{name}={Value()}", $"{name}={Value()}"] : new[] { Name(name) + "=" + Value() }));

    public IEnumerable<(string Name, string Value)> SomeHeaders() => Enumerable.Range(0, _random.Next(3)).Select(_ => (Pick(Headers), Plain()));

    public string Type() => Pick(Types);

    private string Name(string name) => _random.Next(20) switch { 0 => name + "[0]", 1 => name + "[]", 2 => "[" + name, 3 => name.ToUpperInvariant(), _ => name };

    /// <summary>Any letters that a header may hold.</summary>
    private string Plain() => new(Encoding.Latin1.GetString([.. Enumerable.Range(0, _random.Next(40)).Select(_ => (byte)_random.Next(32, 127))]));
}
