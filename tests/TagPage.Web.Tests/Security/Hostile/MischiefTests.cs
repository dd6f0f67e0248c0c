using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace TagPage.Web.Tests.Security.Hostile;

/// <summary>
/// Requests drawn at random against every page, by strangers, clients and an owner’s browser. Many by hand: HOSTILE_REQUESTS is how many;
/// docs/trust.md has the command and what it printed.
/// </summary>
public sealed partial class MischiefTests(House house) : IClassFixture<House>
{
    private static readonly int Requests = int.Parse(Environment.GetEnvironmentVariable("HOSTILE_REQUESTS") ?? "500", CultureInfo.InvariantCulture);

    [Fact]
    public async Task Whatever_is_sent_no_page_breaks()
    {
        var (mischief, broken, answers) = (new Mischief(Requests), new List<string>(), new SortedDictionary<int, int>());
        var pages = house.Pages.Where(p => !p.EndsTheVisit).ToList();

        for (var n = 0; n < Requests; n++)
        {
            using var request = await Draw(mischief, mischief.Pick(pages));
            var visitor = request.Visitor;
            using var answer = await visitor.SendAsync(request.Message, TestContext.Current.CancellationToken);
            var status = (int)answer.StatusCode;
            answers[status] = answers.GetValueOrDefault(status) + 1;
            if (status >= 500)
                broken.Add($"{n}: {request.Message.Method} {request.Message.RequestUri}: {status}, sent {request.Body[..Math.Min(300, request.Body.Length)]} {house.Broke}");
        }

        TestContext.Current.TestOutputHelper!.WriteLine($"{Requests} hostile requests to {pages.Count} pages: {string.Join(", ", answers.Select(a => $"{a.Value} answered {a.Key}"))}");
        Assert.True(broken.Count == 0, string.Join('\n', broken));
        Assert.True(answers.Where(a => a.Key is 200 or 302).Sum(a => a.Value) > Requests / 20, "Hardly a page was reached.");
    }

    private sealed record Sent(HttpClient Visitor, HttpRequestMessage Message, string Body) : IDisposable
    {
        public void Dispose() => Message.Dispose();
    }

    private async Task<Sent> Draw(Mischief mischief, HousePage page)
    {
        var visitor = mischief.Maybe(6) ? house.Stranger : house.For(page);
        var address = mischief.Maybe(3) ? Parts().Replace(page.Door.Route, _ => Path(mischief)) : page.Address;
        var message = new HttpRequestMessage(page.TakesForms && !mischief.Maybe(3) ? HttpMethod.Post : HttpMethod.Get, new Uri(Asked(mischief, page, address), UriKind.Relative));
        var body = "";
        if (message.Method == HttpMethod.Post)
        {
            var names = page.Fields("Post").Select(f => f.Name).ToList();
            body = (mischief.Maybe(8) ? "" : $"__RequestVerificationToken={Uri.EscapeDataString(await house.Token(house.For(page)))}&") + mischief.Fields(names);
            message.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body));
            message.Content.Headers.TryAddWithoutValidation("Content-Type", mischief.Type());
        }
        foreach (var (name, value) in mischief.SomeHeaders())
            message.Headers.TryAddWithoutValidation(name, value);
        return new Sent(visitor.Client, message, body);
    }

    private static string Asked(Mischief mischief, HousePage page, string address)
    {
        var names = page.Fields("Get").Select(f => f.Name).Append("lang").Append("q").ToList();
        return mischief.Maybe(2) ? address : address + (address.Contains('?', StringComparison.Ordinal) ? "&" : "?") + mischief.Fields(names);
    }

    /// <summary>The test server itself refuses a NUL in a path, as Kestrel does.</summary>
    private static string Path(Mischief mischief)
    {
        var value = mischief.Value();
        return value.Contains("%00", StringComparison.Ordinal) ? "1" : value[..Math.Min(200, value.Length)].TrimEnd('%');
    }

    [GeneratedRegex(@"\{[^{}]*(\{[^{}]*\}[^{}]*)*\}")]
    private static partial Regex Parts();
}
