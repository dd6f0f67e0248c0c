using System.Text;
using System.Text.RegularExpressions;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security.Hostile;

/// <summary>Every page of every visitor is sent what no browser sends; whatever it answers, it does not break.</summary>
[Long]
public sealed partial class SweepTests(House house) : IClassFixture<House>
{
    /// <summary>As in an address or a form body: percent-encoded bytes, including some that are not UTF-8.</summary>
    private static readonly string[] Nasty =
    [
        "%00", "a%00b", "%ED%A0%80", "%FF%FE", "%C0%AF", "%EF%BF%BE", "%E2%80%AE", "%0D%0AX-Evil:1", "%F0%9F%98%80", "%", "%zz", "..%2F..%2Fetc%2Fpasswd",
        "[", "%7B0%7D", "<script>", "9223372036854775807", "-1",
    ];

    private static readonly string[] Long = [new string('x', 100_000), string.Concat(Enumerable.Repeat("e%CC%81", 5_000)), string.Concat(Enumerable.Repeat("%0A", 5_000))];

    private static readonly string[] Queries = ["[=1&a[b=2&=1&&&=", "Input.Name=%00&Input.Name=%FF&%ED%A0%80=%ED%A0%80&lang=%00", "lang=xx&lang=de&q=%00%FF&Q=%5B&after=%00&before=x"];

    private static readonly (string Type, string Body)[] Bodies =
    [
        ("multipart/form-data", "x"), ("application/x-www-form-urlencoded; charset=foo", "a=1"), ("application/json", "{\"a\":1}"), ("text/plain", "x"),
        ("application/x-www-form-urlencoded", "%ED%A0%80=%00&[=1&=&&"), ("application/x-www-form-urlencoded", "__RequestVerificationToken=wrong"), ("", ""),
    ];

    private readonly List<string> _broken = [];

    private int _sent;

    [Fact]
    public async Task Address_that_nobody_wrote_breaks_no_page()
    {
        // The test server itself refuses a NUL in a path, as Kestrel does.
        var (parts, turn) = (Nasty.Where(n => !n.Contains("%00", StringComparison.Ordinal)).ToList(), 0);

        foreach (var page in house.Pages.Where(p => !p.EndsTheVisit))
        {
            foreach (var query in Queries)
                await Holds(page, HttpMethod.Get, page.Asked(query));
            for (var n = 0; n < 4 && page.Door.Route.Contains('{', StringComparison.Ordinal); n++)
                await Holds(page, HttpMethod.Get, Parts().Replace(page.Door.Route, parts[turn++ % parts.Count]));
        }

        NothingBroke();
    }

    [Fact]
    public async Task Typed_text_that_nobody_types_breaks_no_page()
    {
        var turn = 0;

        foreach (var page in house.Pages.Where(p => p.TakesForms))
        {
            var token = Uri.EscapeDataString(await house.Token(house.For(page)));
            var names = page.Fields("Post").Select(f => f.Name).Where(n => n != "id").ToList();
            for (var n = 0; n < 5 && names.Count > 0; n++, turn++)
                await Posts(page, token, names.Select((name, i) => $"{name}={Nasty[(i + turn) % Nasty.Length]}"));
            await Posts(page, token, names.Select((name, i) => $"{name}={(i < 5 ? Long[(i + turn) % Long.Length] : "x")}"));
            await Posts(page, token, names.SelectMany(n => new[] { $"{n}=1", $"{n}=2", $"{n}=" }));
            await Posts(page, token, names.SelectMany(n => new[] { $"{n}[0]=1", $"{n}[]=2", $"{n}.Length=3", $"{n}[x][y]=4" }));
            await Posts(page, token, []);
        }

        NothingBroke();
    }

    [Fact]
    public async Task Body_that_is_no_form_breaks_no_page()
    {
        foreach (var page in house.Pages.Where(p => p.TakesForms))
            foreach (var (type, body) in Bodies)
                await Holds(page, HttpMethod.Post, page.Address, type, body);

        NothingBroke();
    }

    /// <summary>A method named like a handler becomes one: OnPageHandlerSelected answers the verb PAGE.</summary>
    [Fact]
    public void Pages_answer_no_verbs_but_get_and_post() =>
        Assert.Equal(["Get", "Post"], house.Pages.SelectMany(p => p.Page.HandlerMethods).Select(h => h.HttpMethod).Distinct().Order());

    private void NothingBroke()
    {
        Assert.True(_broken.Count == 0, string.Join('\n', _broken));
        Assert.True(_sent > 300, $"{_sent} sent");
    }

    private Task Posts(HousePage page, string token, IEnumerable<string> pairs) =>
        Holds(page, HttpMethod.Post, page.Address, "application/x-www-form-urlencoded", $"__RequestVerificationToken={token}&{string.Join('&', pairs)}");

    private async Task Holds(HousePage page, HttpMethod method, string address, string type = "", string body = "")
    {
        using var request = new HttpRequestMessage(method, new Uri(address, UriKind.Relative));
        if (method == HttpMethod.Post)
        {
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body));
            request.Content.Headers.TryAddWithoutValidation("Content-Type", type);
        }
        using var answer = await house.For(page).Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.False(answer.Headers.Contains("X-Evil"));
        if ((int)answer.StatusCode >= 500)
            _broken.Add($"{method} {address}: {answer.StatusCode}, sent {body[..Math.Min(200, body.Length)]} {house.Broke}");
        _sent++;
    }

    [GeneratedRegex(@"\{[^{}]*(\{[^{}]*\}[^{}]*)*\}")]
    private static partial Regex Parts();
}
