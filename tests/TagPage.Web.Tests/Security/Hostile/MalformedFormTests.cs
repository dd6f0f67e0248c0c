using System.Net;
using System.Text;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security.Hostile;

/// <summary>Forms that no browser sends.</summary>
public sealed class MalformedFormTests(House house) : IClassFixture<House>
{
    [Theory]
    [InlineData("application/x-www-form-urlencoded; charset=foo", "Input.Name=Heron")]
    [InlineData("application/x-www-form-urlencoded; charset=utf-7", "Input.Name=Heron")]
    [InlineData("application/x-www-form-urlencoded; charset=utf-16", "Input.Name=Heron")]
    [InlineData("multipart/form-data", "Input.Name=Heron")]
    [InlineData("multipart/form-data; boundary=", "Input.Name=Heron")]
    [InlineData("multipart/form-data; boundary=xyz", "--xyz\r\nContent-Disposition: form-data; name=\"Input.Name\"\r\n\r\nHer")]
    [InlineData("multipart/form-data; boundary=xyz", "--xyz\r\nContent-Disposition: form-data; name=\"Input.Name\"\r\nContent-Type: text/plain; charset=utf-7\r\n\r\nHeron\r\n--xyz--\r\n")]
    public async Task Form_that_cannot_be_read_is_refused_in_plain_words_and_nothing_changes(string type, string body)
    {
        var before = house.Shop.Database.Dump();

        foreach (var (visitor, address) in Places)
        {
            var answer = await Post(visitor, address, type, Encoding.ASCII.GetBytes(body), await house.Token(visitor));
            Assert.True(answer.Status == HttpStatusCode.BadRequest, $"{address}: {answer.Status}\n{house.Broke}");
            Assert.Contains("could not be read", answer.Main, StringComparison.Ordinal);
        }

        Assert.Equal(before, house.Shop.Database.Dump());
    }

    [Fact]
    public async Task Form_of_more_fields_than_any_page_has_is_refused_in_plain_words()
    {
        var body = string.Join('&', Enumerable.Range(0, 2000).Select(n => $"f{n}=1"));

        var answer = await Post(house.Owner, "/shop/strings/new", "application/x-www-form-urlencoded", Encoding.ASCII.GetBytes(body), await house.Token(house.Owner));

        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Contains("could not be read", answer.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("]")]
    [InlineData("a[")]
    [InlineData("a[b")]
    [InlineData("Input[Name")]
    [InlineData("Input.Name[")]
    [InlineData("[][][")]
    [InlineData("Input..Name")]
    [InlineData("")]
    public async Task Name_that_no_page_knows_is_passed_over(string name)
    {
        foreach (var (visitor, address) in Places)
        {
            var token = await house.Token(visitor);
            using var form = new FormUrlEncodedContent([new("__RequestVerificationToken", token), new(name, "1")]);
            var answer = await visitor.Follow(await WebPage.Of(await visitor.Client.PostAsync(new Uri(address, UriKind.Relative), form, TestContext.Current.CancellationToken), address));
            Assert.True((int)answer.Status is 200 or 302, $"{address}: {answer.Status}\n{house.Broke}");
            using var looked = await visitor.Get($"{address.Replace("/message", "", StringComparison.Ordinal)}?{Uri.EscapeDataString(name)}=1");
            Assert.True((int)looked.StatusCode is 200 or 302, $"{address}?{name}: {looked.StatusCode}\n{house.Broke}");
        }
    }

    private IEnumerable<(Visitor, string)> Places =>
        [(house.Owner, "/shop/strings/new"), (house.Client, "/my/contact"), (house.Stranger, house.Pages.Single(p => p.Door.Route == "/t/{code}/found/message").Address)];

    private static async Task<WebPage> Post(Visitor visitor, string address, string type, byte[] body, string token)
    {
        using var content = new ByteArrayContent(body);
        content.Headers.TryAddWithoutValidation("Content-Type", type);
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(address, UriKind.Relative)) { Content = content };
        request.Headers.Add("RequestVerificationToken", token);
        return await WebPage.Of(await visitor.Client.SendAsync(request, TestContext.Current.CancellationToken), address);
    }
}
