using System.Globalization;
using System.Net;
using Dapper;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

// RFC 9116: 2.5.3 Contact (a URI, https where it is a web address), 2.5.5 Expires (required, advised to be less than a year ahead), 3 (location, text/plain, utf-8).
public sealed class SecurityTextTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Expires_lies_ahead_by_less_than_a_year_however_long_the_program_runs()
    {
        foreach (var days in new[] { 0, 300, 3000 })
        {
            _shop.Clock.Advance(TimeSpan.FromDays(days));
            var expires = DateTimeOffset.Parse(Assert.Single(await Fields("Expires")), CultureInfo.InvariantCulture);
            Assert.InRange(expires - _shop.Clock.GetUtcNow(), TimeSpan.FromDays(30), TimeSpan.FromDays(364));
        }
    }

    [Theory]
    [InlineData("bench@ferrygate.example", "+442079460182", "mailto:bench@ferrygate.example")]
    [InlineData("a&b?c@ferrygate.example", null, "mailto:a%26b%3Fc@ferrygate.example")]
    [InlineData(null, "+442079460182", "tel:+442079460182")]
    [InlineData(null, null, "https://tag.example/")]
    public async Task Contact_is_the_shops_mail_else_its_phone_else_its_address(string? mail, string? phone, string contact)
    {
        _shop.Database.Write(c => c.Execute("""
            INSERT INTO shop (id, name, mail, phone, country, time_zone, currency, tension_unit)
            VALUES (1, 'Bench by the Mill', @mail, @phone, 'GB', 'Europe/London', 'GBP', 'Lb')
            """, new { mail, phone }));

        Assert.Equal(contact, Assert.Single(await Fields("Contact")));
        Assert.Equal("https://tag.example/.well-known/security.txt", Assert.Single(await Fields("Canonical")));
    }

    [Fact]
    public async Task Shop_tried_over_http_without_mail_or_phone_has_nobody_to_name()
    {
        await using var tried = new TestShop { Settings = { ["TagPage:Address"] = "http://localhost:5080" } };

        Assert.Equal(HttpStatusCode.NotFound, (await tried.Stranger().Get("/.well-known/security.txt")).StatusCode);
    }

    private async Task<List<string>> Fields(string name)
    {
        var answer = await _shop.Stranger().Open("/.well-known/security.txt");
        Assert.Equal("text/plain; charset=utf-8", answer.Response.Content.Headers.ContentType?.ToString());
        return [.. answer.Text.Split('\n').Where(l => l.StartsWith(name + ": ", StringComparison.Ordinal)).Select(l => l[(name.Length + 2)..])];
    }
}
