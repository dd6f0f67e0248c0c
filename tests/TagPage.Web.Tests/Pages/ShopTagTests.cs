using System.Net;
using TagPage.Core.Tags;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Tests.Cast;
using ZXing;
using ZXing.Common;

namespace TagPage.Web.Tests.Pages;

public sealed class ShopTagTests : IDisposable
{
    private readonly TestShop _shop = new();

    private TagStore Store => _shop.Get<TagStore>();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Racket_without_a_tag_gets_one_and_only_one()
    {
        var racket = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Odalys"), "Pim"));
        var owner = _shop.Owner();
        var form = await owner.Open($"/shop/tags/new?racket={racket}");

        await owner.Send(form);
        await owner.Send(form);
        var other = await owner.Send(await owner.Open($"/shop/tags/new?racket={racket}"));

        Assert.Contains("This racket has a tag.", other.Main, StringComparison.Ordinal);
        Assert.Equal(TagState.Live, Assert.Single(Store.Of(racket)).State);
    }

    [Fact]
    public async Task Replaced_tag_retires_for_good_and_a_double_click_makes_one_new_tag()
    {
        var family = _shop.Records.Family();
        var owner = _shop.Owner();
        var form = await owner.Open($"/shop/tags/replace/{family.Tag}");

        await owner.Send(form);
        await owner.Send(form);

        var tags = Store.Of(family.Racket);
        Assert.Equal(2, tags.Count);
        Assert.Equal((TagState.Live, TagState.Retired, family.Tag), (tags[0].State, tags[1].State, tags[1].Code));
        Assert.IsType<Outcome.Refused>(Store.Replace(Who.Shop, family.Tag, FormKey.New()));
        Assert.Equal(2, Store.Of(family.Racket).Count);
    }

    [Fact]
    public async Task Tag_can_retire_without_a_successor()
    {
        var family = _shop.Records.Family();
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"/shop/tags/retire/{family.Tag}"));

        Assert.Equal(TagState.Retired, Assert.Single(Store.Of(family.Racket)).State);
    }

    [Fact]
    public async Task Blank_tag_is_linked_in_two_taps_and_the_tag_before_retires()
    {
        var family = _shop.Records.Family();
        var blank = _shop.Records.BlankTag();
        var owner = _shop.Owner();
        var pick = await owner.Open($"/shop/tags/link/{blank}");
        var confirm = await owner.Open(pick.Document.QuerySelector("ul.list a")!.GetAttribute("href")!);
        Assert.Contains("That one will be retired", confirm.Main, StringComparison.Ordinal);

        var answer = await owner.Send(confirm);
        var second = await owner.Send(confirm);

        Assert.Equal($"/shop/rackets/{family.Racket}", answer.Location);
        Assert.Equal(TagState.Live, Store.Get(blank)!.State);
        Assert.Equal(TagState.Retired, Store.Get(family.Tag)!.State);
        Assert.Equal($"/shop/rackets/{family.Racket}", second.Location);
        Assert.Equal(2, Store.Of(family.Racket).Count);
    }

    [Fact]
    public async Task Racket_to_link_is_found_by_player_client_or_frame()
    {
        _shop.Records.Family();
        var blank = _shop.Records.BlankTag();
        var owner = _shop.Owner();

        foreach (var words in new[] { "pim", "odal ferr", "PELLMORE", "méadow" })
            Assert.Single((await owner.Open($"/shop/tags/link/{blank}?q={Uri.EscapeDataString(words)}")).Document.QuerySelectorAll("ul.list a"));
        foreach (var words in new[] { "nobody", "\"* OR 1", "***", "NEAR(" })
            Assert.Empty((await owner.Open($"/shop/tags/link/{blank}?q={Uri.EscapeDataString(words)}")).Document.QuerySelectorAll("ul.list a"));
    }

    [Fact]
    public void Live_and_retired_tags_cannot_be_linked()
    {
        var family = _shop.Records.Family();
        var other = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Bastian"), "Bastian"));
        var retired = _shop.Records.RetiredTag();

        Assert.IsType<Outcome.Refused>(Store.Link(Who.Shop, family.Tag, other));
        Assert.IsType<Outcome.Refused>(Store.Link(Who.Shop, retired, other));

        Assert.Equal(family.Racket, Store.Get(family.Tag)!.RacketId);
        Assert.Empty(Store.Of(other));
    }

    [Fact]
    public void Sold_racket_gets_no_tag()
    {
        var sold = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Bastian"), "Bastian"), state: "Sold");

        Assert.IsType<Outcome.Refused>(Store.Make(Who.Shop, sold, FormKey.New()));
        Assert.IsType<Outcome.Refused>(Store.Link(Who.Shop, _shop.Records.BlankTag(), sold));

        Assert.Empty(Store.Of(sold));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    [InlineData(20)]
    public async Task Png_of_a_tag_reads_back_as_its_public_address(int dots)
    {
        var family = _shop.Records.Family();

        var png = await (await _shop.Owner().Get($"/shop/tags/{family.Tag}/qr.png?dots={dots}")).Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);

        var (width, gray) = Gray(png);
        // Version 2 has 25 modules, 33 with the quiet zone (ISO/IEC 18004).
        Assert.Equal(33 * dots, width);
        var reader = new BarcodeReaderGeneric { Options = new DecodingOptions { PossibleFormats = [BarcodeFormat.QR_CODE], PureBarcode = true } };
        var read = reader.Decode(new RGBLuminanceSource(gray, width, width, RGBLuminanceSource.BitmapFormat.Gray8));
        Assert.Equal($"HTTPS://TAG.EXAMPLE/T/{family.Tag}", read.Text);
    }

    [Fact]
    public async Task Square_is_served_as_svg_too_but_not_for_a_retired_tag()
    {
        var family = _shop.Records.Family();
        var owner = _shop.Owner();

        var svg = await owner.Get($"/shop/tags/{family.Tag}/qr.svg");

        Assert.Equal("image/svg+xml", svg.Content.Headers.ContentType!.MediaType);
        Assert.StartsWith("<svg", await svg.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get($"/shop/tags/{_shop.Records.RetiredTag(family.Racket)}/qr.svg")).StatusCode);
    }

    /// <summary>The pixels of a PNG of one bit grey without filters (ISO/IEC 15948).</summary>
    private static (int Width, byte[] Gray) Gray(byte[] png)
    {
        var width = System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16));
        var at = png.AsSpan().IndexOf("IDAT"u8);
        var length = System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at - 4));
        using var packed = new MemoryStream(png, at + 4, length);
        using var unpacked = new System.IO.Compression.ZLibStream(packed, System.IO.Compression.CompressionMode.Decompress);
        using var raw = new MemoryStream();
        unpacked.CopyTo(raw);
        var lines = raw.ToArray();
        var stride = 1 + (width + 7) / 8;
        return (width, [.. Enumerable.Range(0, width * width).Select(i => (byte)((lines[i / width * stride + 1 + i % width / 8] >> (7 - i % width % 8) & 1) * 255))]);
    }
}
