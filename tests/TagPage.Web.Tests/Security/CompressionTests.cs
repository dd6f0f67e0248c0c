using System.IO.Compression;
using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>Which pages are compressed: those that finders and reminded households load, never one that repeats what was sent.</summary>
public sealed class CompressionTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly string _found, _reminder;
    private readonly long _odalys;

    public CompressionTests()
    {
        _shop.Records.Shop();
        var family = _shop.Records.Family();
        _shop.Records.Agree("Message");
        _odalys = family.Client;
        _found = $"/t/{family.Tag}/found";
        _reminder = "/n/" + _shop.Get<TagPage.Records.Outbox.LinkTokens>().Token(TagPage.Records.Outbox.LinkPurpose.Reminder, _shop.Records.Reminder(_odalys, family.Racket), _shop.Records.Text("SELECT secret FROM reminder"));
    }

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task Found_and_reminder_page_come_compressed_and_read_the_same(string encoding)
    {
        foreach (var address in new[] { _found, _reminder })
        {
            using var answer = await Ask(_shop.Stranger(), HttpMethod.Get, address, encoding);

            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Equal([encoding], answer.Content.Headers.ContentEncoding);
            Assert.Contains("Accept-Encoding", answer.Headers.Vary);
            var packed = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
            Assert.InRange(packed.Length, 1000, 8 * 1024);
            using Stream unpacked = encoding == "br" ? new BrotliStream(new MemoryStream(packed), CompressionMode.Decompress) : new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
            Assert.Contains("</html>", await new StreamReader(unpacked).ReadToEndAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Answers_to_a_press_refused_forms_and_private_pages_come_as_they_are()
    {
        var finder = _shop.Stranger();
        var form = await finder.Open(_found);
        finder.Client.DefaultRequestHeaders.Add("Accept-Encoding", "gzip, br");
        var refused = await finder.Post(form, form.Form("/message"), ("Input.Message", ""));
        var (odalys, runa) = (await _shop.OnOwnPage(_odalys), _shop.Owner());

        Assert.Empty(refused.Response.Content.Headers.ContentEncoding);
        foreach (var (visitor, address) in new[] { (finder, refused.Location!), (odalys, "/my"), (runa, "/shop"), (finder, "/my/link") })
        {
            using var answer = await Ask(visitor, HttpMethod.Get, address, "br");
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Empty(answer.Content.Headers.ContentEncoding);
        }
    }

    [Fact]
    public async Task Who_asks_for_nothing_compressed_gets_nothing_compressed()
    {
        using var answer = await _shop.Stranger().Get(_found);

        Assert.Empty(answer.Content.Headers.ContentEncoding);
    }

    private static async Task<HttpResponseMessage> Ask(Visitor visitor, HttpMethod method, string address, string encoding)
    {
        using var request = new HttpRequestMessage(method, new Uri(address, UriKind.Relative));
        request.Headers.TryAddWithoutValidation("Accept-Encoding", encoding);
        return await visitor.Client.SendAsync(request, TestContext.Current.CancellationToken);
    }
}
