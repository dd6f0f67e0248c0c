using System.Net;
using System.Security.Cryptography;
using System.Text;
using Dapper;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>What every answer carries, whatever became of the request.</summary>
public sealed class HeaderTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Every_door_answers_with_all_security_headers_and_guarded_cookies()
    {
        var tag = _shop.Records.Family().Tag.ToString();
        foreach (var visitor in new[] { _shop.Stranger(), _shop.Owner() })
            foreach (var door in Door.Listed)
                await Check(await visitor.Get(door.Address(tag)));
    }

    [Theory]
    [InlineData("GET", "/nothing/here", HttpStatusCode.NotFound)]
    [InlineData("GET", "/shop/nothing", HttpStatusCode.NotFound)]
    [InlineData("POST", "/account/sign-in", HttpStatusCode.BadRequest)]
    [InlineData("DELETE", "/healthz/live", HttpStatusCode.MethodNotAllowed)]
    [InlineData("POST", "/.well-known/security.txt", HttpStatusCode.MethodNotAllowed)]
    [InlineData("GET", "/problem/500", HttpStatusCode.NotFound)]
    public async Task Errors_carry_them_too(string method, string address, HttpStatusCode status)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), address);
        var answer = await _shop.Stranger().Client.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(status, answer.StatusCode);
        await Check(answer);
    }

    [Fact]
    public async Task Broken_program_shows_an_id_and_no_trace_and_logs_both()
    {
        _shop.Database.Write(c => c.Execute("ALTER TABLE string_kind RENAME TO mislaid"));

        var answer = await _shop.Owner().Open("/shop/strings");

        Assert.Equal(HttpStatusCode.InternalServerError, answer.Status);
        await Check(answer.Response);
        Assert.DoesNotContain("Exception", answer.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("string_kind", answer.Text, StringComparison.Ordinal);
        var id = answer.Document.QuerySelector(".number")!.TextContent;
        Assert.Contains(_shop.Log.All, l => l.Contains("no such table", StringComparison.Ordinal));
        Assert.Contains(_shop.Log.All, l => l.Contains(id, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Error_page_stands_without_a_database()
    {
        // Before the change: without its table the program would not start.
        var database = _shop.Database;
        _shop.ChangeFromOutside("ALTER TABLE shop RENAME TO mislaid");
        database.Dispose();

        var answer = await _shop.Stranger().Open("/");

        Assert.Equal(HttpStatusCode.InternalServerError, answer.Status);
        Assert.Contains("Something went wrong on our side", answer.Main, StringComparison.Ordinal);
        await Check(answer.Response);
    }

    [Fact]
    public async Task Unready_and_refused_answers_carry_them_too()
    {
        await Check((await _shop.Stranger().SignInTooOften()).Response, HttpStatusCode.TooManyRequests);
        _shop.Database.Write(c => c.Execute("DELETE FROM migration"));
        await Check(await _shop.Stranger().Get("/healthz/ready"), HttpStatusCode.ServiceUnavailable);
    }

    [Fact]
    public async Task Forged_host_appears_nowhere()
    {
        var tag = _shop.Records.Family().Tag.ToString();
        foreach (var visitor in new[] { _shop.Stranger(), _shop.Owner() })
            foreach (var door in Door.Listed.Where(d => !d.Route.Contains('*', StringComparison.Ordinal)))
            {
                using var request = new HttpRequestMessage(HttpMethod.Get, door.Address(tag)) { Headers = { Host = "evil.example" } };
                request.Headers.Add("X-Forwarded-Host", "evil.example");
                var answer = await visitor.Client.SendAsync(request, TestContext.Current.CancellationToken);
                var text = answer.Headers + await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
                Assert.False(text.Contains("evil.example", StringComparison.Ordinal), door.Route);
            }
    }

    private static async Task Check(HttpResponseMessage answer, HttpStatusCode? status = null)
    {
        var address = answer.RequestMessage!.RequestUri!.AbsolutePath;
        Assert.Equal(status ?? answer.StatusCode, answer.StatusCode);
        string Header(string name) => answer.Headers.TryGetValues(name, out var values) ? string.Join(", ", values) : $"no {name} at {address}";
        var policy = Header("Content-Security-Policy");
        foreach (var needed in new[] { "default-src 'none'", "base-uri 'none'", "frame-ancestors 'none'", "form-action 'self'" })
            Assert.Contains(needed, policy, StringComparison.Ordinal);
        // The one page with a camera reads with WebAssembly, which is no eval of text.
        var isScan = address == "/shop/find" && answer.IsSuccessStatusCode;
        Assert.DoesNotContain("unsafe", isScan ? policy.Replace("script-src 'self' 'wasm-unsafe-eval';", "", StringComparison.Ordinal) : policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Header("X-Content-Type-Options"));
        Assert.Equal("no-referrer", Header("Referrer-Policy"));
        Assert.Equal("DENY", Header("X-Frame-Options"));
        Assert.Contains(isScan ? "camera=(self)" : "camera=()", Header("Permissions-Policy"), StringComparison.Ordinal);
        Assert.Equal("max-age=31536000", Header("Strict-Transport-Security"));
        Assert.NotNull(answer.Headers.CacheControl);
        Assert.False(answer.Headers.Contains("Server") || answer.Headers.Contains("X-Powered-By"), address);
        CheckCookies(answer);
        await CheckBody(answer, policy);
    }

    private static void CheckCookies(HttpResponseMessage answer)
    {
        foreach (var cookie in answer.Headers.TryGetValues("Set-Cookie", out var set) ? set : [])
        {
            Assert.StartsWith("__Host-", cookie, StringComparison.Ordinal);
            foreach (var needed in new[] { "; secure", "; httponly", "; samesite=", "; path=/" })
                Assert.Contains(needed, cookie, StringComparison.OrdinalIgnoreCase);
        }
    }

    /// <summary>Text says its charset, and a page holds no script or style that its own policy would stop.</summary>
    private static async Task CheckBody(HttpResponseMessage answer, string policy)
    {
        var type = answer.Content.Headers.ContentType;
        if (type?.MediaType is "text/html" or "text/plain" or "text/calendar" or "text/csv" && type.CharSet is not null)
            Assert.Equal("utf-8", type.CharSet, ignoreCase: true);
        if (type?.MediaType != "text/html")
            return;
        Assert.Equal("utf-8", type.CharSet, ignoreCase: true);
        var page = await WebPage.Of(answer, "");
        Assert.Empty(page.Document.QuerySelectorAll("[style], script:not([src]), [onclick], [onload], [onsubmit], iframe, object, embed, base"));
        foreach (var style in page.Document.QuerySelectorAll("style"))
            Assert.Contains(Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style.TextContent))), policy, StringComparison.Ordinal);
        foreach (var source in page.Document.QuerySelectorAll("[src], link[href]").Select(e => e.GetAttribute("src") ?? e.GetAttribute("href")!))
            Assert.True((source.StartsWith('/') && !source.StartsWith("//", StringComparison.Ordinal)) || source == "data:,", source);
    }
}
