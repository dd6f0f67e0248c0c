using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using AngleSharp.Dom;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>On the real server, because the test server accepts bodies of any size.</summary>
public sealed class FormSizeTests : IDisposable
{
    private readonly TestShop _shop = new() { IsNew = true };

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData(1_000_000, HttpStatusCode.BadRequest)]
    [InlineData(2_000_000, HttpStatusCode.RequestEntityTooLarge)]
    public async Task Form_of_more_than_a_megabyte_is_refused(int bytes, HttpStatusCode status)
    {
        var owner = OwnerAtTheServer();
        using var form = new FormUrlEncodedContent([new("Input.Note", new string('n', bytes))]);

        var answer = await WebPage.Of(await owner.Client.PostAsync(new Uri("/shop/strings/new", UriKind.Relative), form, TestContext.Current.CancellationToken), "");

        Assert.Equal(status, answer.Status);
        if (status == HttpStatusCode.RequestEntityTooLarge)
            Assert.Contains("That is too much at once", answer.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/shop/strings/new", 12_000_000)]
    [InlineData("/shop/labels/logo", 24_000_000)]
    public async Task Sender_who_does_not_look_up_before_all_is_sent_reads_why_it_was_refused(string path, int bytes)
    {
        _shop.House.UseKestrel(0);
        _shop.House.StartServer();
        // So do Apache as a proxy and the usual browsers; a server that hangs up on them is a broken connection to whoever sent the form.
        using var sender = new TcpClient();
        await sender.ConnectAsync(IPAddress.Loopback, _shop.House.ClientOptions.BaseAddress.Port, TestContext.Current.CancellationToken);
        await using var stream = sender.GetStream();
        var head = $"POST {path} HTTP/1.1\r\nHost: localhost\r\n{TestSource.Header}: 127.0.0.1\r\nX-Forwarded-Proto: https\r\n{TestSignIn.Header}: Owner\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: {bytes}\r\n\r\n";

        await stream.WriteAsync(Encoding.ASCII.GetBytes(head), TestContext.Current.CancellationToken);
        for (var sent = 0; sent < bytes; sent += 100_000)
        {
            await stream.WriteAsync(new byte[100_000], TestContext.Current.CancellationToken);
            await Task.Yield();
        }

        using var reader = new StreamReader(stream);
        Assert.Equal("HTTP/1.1 413 Payload Too Large", await reader.ReadLineAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task File_as_large_as_the_manual_promises_is_taken_and_read()
    {
        var owner = OwnerAtTheServer();
        _shop.Records.Shop();

        var kept = await SendFile(owner, "/shop/import", "Files", "clients.csv", Clients(19_000_000));

        Assert.StartsWith("/shop/import/check/", kept.Response.RequestMessage!.RequestUri!.AbsolutePath, StringComparison.Ordinal);
        Assert.Contains("This would add", kept.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task File_past_what_the_manual_promises_is_refused_beside_its_field()
    {
        var answer = await SendFile(OwnerAtTheServer(), "/shop/import", "Files", "clients.csv", Clients(21_000_000));

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Equal("“clients.csv” has more than 20 MB. Split it and send the parts one after the other.", Assert.Single(answer.Errors));
        Assert.Empty(Directory.EnumerateFileSystemEntries(_shop.Get<DataFolder>().Uploads));
    }

    [Fact]
    public async Task Picture_that_is_too_large_is_refused_beside_its_field_and_the_rest_of_the_form_stays()
    {
        var answer = await SendFile(OwnerAtTheServer(), "/shop/labels/logo", "Input.File", "logo.png", new byte[2_000_000], ("Input.Threshold", "77"));

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Equal("The picture has more than 500 KB. Save it smaller.", Assert.Single(answer.Errors));
        Assert.Equal("77", answer.Document.QuerySelector("[name='Input.Threshold']")!.GetAttribute("value"));
        Assert.Equal(0, _shop.Records.Count("label_logo"));
    }

    private Visitor OwnerAtTheServer()
    {
        _shop.House.UseKestrel(0);
        _shop.House.StartServer();
        var owner = _shop.Owner();
        owner.Client.BaseAddress = _shop.House.ClientOptions.BaseAddress;
        owner.Client.DefaultRequestHeaders.Add(TestSource.Header, "127.0.0.1");
        owner.Client.DefaultRequestHeaders.Add("X-Forwarded-Proto", "https");
        return owner;
    }

    private static byte[] Clients(int bytes)
    {
        var text = new StringBuilder("client,name,note\n");
        for (var n = 1; text.Length < bytes; n++)
            text.Append(CultureInfo.InvariantCulture, $"C{n},Odalys Ferran {n},{new string('n', 400)}\n");
        return Encoding.ASCII.GetBytes(text.ToString());
    }

    private static async Task<WebPage> SendFile(Visitor visitor, string address, string field, string name, byte[] bytes, params (string Name, string Value)[] typed)
    {
        var page = await visitor.Open(address);
        var values = FormValues.Of(page.Document.QuerySelector<AngleSharp.Html.Dom.IHtmlFormElement>("main form")!);
        foreach (var (key, value) in typed)
            values.Set(key, value);
        using var content = new MultipartFormDataContent();
        foreach (var (key, value) in values.Pairs.Where(p => p.Key != field))
            content.Add(new StringContent(value), key);
        content.Add(new ByteArrayContent(bytes), field, name);
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(address, UriKind.Relative)) { Content = content };
        // Cookies are for https, which stands before this server as a header alone, so nobody else carries them.
        request.Headers.Add("Cookie", page.Response.Headers.GetValues("Set-Cookie").Select(c => c.Split(';')[0]));
        return await WebPage.Of(await visitor.Client.SendAsync(request, TestContext.Current.CancellationToken), address);
    }
}
