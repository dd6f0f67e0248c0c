using System.Globalization;
using System.Text.RegularExpressions;
using TagPage.Records.Outbox;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;
using ZXing;
using ZXing.Common;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>The owner makes a client's private link and hands it over.</summary>
public sealed partial class OwnersLinkTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;
    private readonly long _odalys;

    public OwnersLinkTests()
    {
        _shop.Records.Shop();
        _odalys = _shop.Records.Family().Client;
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Link_made_on_the_clients_page_can_be_scanned_mailed_sent_by_sms_and_copied()
    {
        Assert.Contains($"/shop/corner/{_odalys}", (await _runa.Open($"/shop/clients/{_odalys}")).Text, StringComparison.Ordinal);
        var page = await Make();

        var link = page.Document.QuerySelector("#link-text")!.TextContent;
        Assert.Matches("^https://tag.example/my/[0-9]+-[A-Za-z0-9_-]{22}$", link);
        Assert.Equal(link, Decode(page.Document.QuerySelector(".square svg")!.OuterHtml));
        var sms = page.Document.QuerySelector("#sms-text")!.TextContent;
        Assert.Contains(link, sms, StringComparison.Ordinal);
        Assert.True(Sms.Of(sms) is { IsGsm7: true, Parts: 1 });
        await _runa.Send(page, page.Form($"/shop/corner/link/{Id(page)}?handler=Mail"));
        Assert.Contains(link, Assert.Single(await _shop.MailsSent()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Outbox_names_the_links_record_and_never_holds_the_link()
    {
        var page = await Make();
        var secret = page.Document.QuerySelector("#link-text")!.TextContent.Split('-', 2)[1];

        await _runa.Send(page, page.Form($"/shop/corner/link/{Id(page)}?handler=Mail"));

        Assert.Single(MailText.Read(_shop.Records.Text("SELECT body FROM outbox")).Parts, p => p is { Kind: PartKind.Link, Link: LinkPurpose.OwnPage });
        Assert.DoesNotContain(secret, _shop.Database.Dump(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Mail_goes_as_text_and_as_a_simple_page_in_the_clients_language()
    {
        _shop.Records.Change("UPDATE client SET language = 'es', name = 'Odalys <b>Ferran</b>'");
        var page = await Make();
        await _runa.Send(page, page.Form($"/shop/corner/link/{Id(page)}?handler=Mail"));
        await _shop.MailsSent();

        var mail = await MimeKit.MimeMessage.LoadAsync(Directory.GetFiles(Path.Combine(_shop.Folder, "mail")).Single(), TestContext.Current.CancellationToken);

        Assert.Contains("Este enlace abre su propia página", mail.TextBody, StringComparison.Ordinal);
        Assert.Matches("<a href=\"https://tag.example/my/[^\"]+\">", mail.HtmlBody);
        Assert.Contains("Odalys &lt;b&gt;Ferran", mail.HtmlBody, StringComparison.Ordinal);
        Assert.Equal("multipart/alternative", mail.Body!.ContentType.MimeType);
    }

    [Fact]
    public async Task Client_without_a_mail_address_is_not_offered_one_and_a_forged_press_queues_nothing()
    {
        var page = await Make();
        var form = page.Form($"/shop/corner/link/{Id(page)}?handler=Mail");
        _shop.Records.Change("UPDATE client SET mail = NULL");

        var answer = await _runa.Send(page, form);

        Assert.Contains("no email address on file", answer.Main, StringComparison.Ordinal);
        Assert.False((await _runa.Open($"/shop/corner/link/{Id(page)}")).HasForm($"/shop/corner/link/{Id(page)}?handler=Mail"));
        Assert.Equal(0, _shop.Records.Count("outbox"));
    }

    [Fact]
    public async Task All_links_and_browsers_are_taken_back_with_one_press()
    {
        var odalys = await _shop.OnOwnPage(_odalys);
        var page = await _runa.Open($"/shop/corner/{_odalys}");
        Assert.Contains("1 browser is signed in", page.Main, StringComparison.Ordinal);

        await _runa.Send(page, page.Form($"/shop/corner/{_odalys}?handler=SignOut"));

        Assert.False(await odalys.IsOnOwnPage());
        Assert.Contains("withdrawn on 25 Nov 2026", (await _runa.Open($"/shop/corner/{_odalys}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_who_is_not_on_file_gets_a_link()
    {
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await _runa.Open("/shop/corner/99")).Status);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await _runa.Open("/shop/corner/link/99")).Status);
    }

    private async Task<WebPage> Make()
    {
        var answer = await _runa.Send(await _runa.Open($"/shop/corner/{_odalys}"));
        return await _runa.Open(answer.Location!);
    }

    private static string Id(WebPage page) => page.Path.Split('/')[^1];

    /// <summary>Read by ZXing.Net, which did not draw it.</summary>
    private static string Decode(string svg)
    {
        const int Scale = 4;
        var modules = Module().Matches(svg).Select(m => (X: Number(m.Groups[1]), Y: Number(m.Groups[2]))).ToHashSet();
        var width = Number(Side().Match(svg).Groups[1]) * Scale;
        var gray = new byte[width * width];
        for (var i = 0; i < gray.Length; i++)
            gray[i] = modules.Contains((i % width / Scale, i / width / Scale)) ? (byte)0 : (byte)255;
        var reader = new BarcodeReaderGeneric { Options = new DecodingOptions { PossibleFormats = [BarcodeFormat.QR_CODE], PureBarcode = true } };
        return reader.Decode(new RGBLuminanceSource(gray, width, width, RGBLuminanceSource.BitmapFormat.Gray8)).Text;
    }

    private static int Number(Group digits) => int.Parse(digits.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"M(\d+) (\d+)h1")]
    private static partial Regex Module();

    [GeneratedRegex(@"viewBox=""0 0 (\d+) ", RegexOptions.IgnoreCase)]
    private static partial Regex Side();
}
