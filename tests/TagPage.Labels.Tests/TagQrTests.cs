using TagPage.Core.Tags;

namespace TagPage.Labels.Tests;

public class TagQrTests
{
    // ISO/IEC 18004, alphanumeric capacity of versions 1 to 6 at M, Q, H. Worked out from it:
    // the smallest version at M, then the highest level that this version still has room for.
    private static readonly int[,] Capacity =
    {
        { 20, 16, 10 }, { 38, 29, 20 }, { 61, 47, 35 }, { 90, 67, 50 }, { 122, 87, 64 }, { 154, 108, 84 },
    };

    [Fact]
    public void Every_length_gets_the_smallest_version_and_the_highest_level_that_fits_it()
    {
        for (var length = 1; length <= 154; length++)
        {
            var row = Enumerable.Range(0, 6).First(r => length <= Capacity[r, 0]);
            var level = length <= Capacity[row, 2] ? QrLevel.H : length <= Capacity[row, 1] ? QrLevel.Q : QrLevel.M;
            var qr = TagQr.Of(new string('A', length));
            Assert.Equal((length, row + 1, level), (length, qr.Version, qr.Level));
            Assert.Equal(17 + 4 * qr.Version, qr.Modules);
        }
    }

    [Theory]
    [InlineData("https://tag.example/t/7K2M9Q4TXAV", 2, QrLevel.M)] // 33 characters
    [InlineData("https://sixteen1.example/t/7K2M9Q4TXAV", 2, QrLevel.M)] // a host of 16: 38 characters
    [InlineData("https://seventeen-letters/t/7K2M9Q4TXAV", 3, QrLevel.Q)] // one more
    [InlineData("https://r.tt/t/7K2M9Q4TXAV", 2, QrLevel.Q)]
    public void A_host_of_up_to_16_characters_stays_on_version_2(string address, int version, QrLevel level)
    {
        var qr = TagQr.Of(address);
        Assert.Equal((version, level), (qr.Version, qr.Level));
        Assert.Equal(address.ToUpperInvariant(), qr.Text);
    }

    [Fact]
    public void Every_symbol_is_read_back_from_its_png_by_an_independent_decoder()
    {
        var random = new Random(20270314);
        foreach (var hostLength in new[] { 4, 9, 16, 17, 25, 40, 60, 90 })
        {
            for (var i = 0; i < 50; i++)
            {
                var code = TagCode.Draw(random.NextBytes);
                var qr = TagQr.Of($"https://{new string('h', hostLength)}/t/{code}");
                Assert.Equal((qr.Text, qr.Level.ToString()), Scanner.Scan(PngReader.Read(qr.ToPng(2 + i % 4))));
                Assert.EndsWith($"/T/{code}", qr.Text, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData("A", "H")]
    [InlineData("AAAAAAAAAAAAAA", "Q")]
    [InlineData("AAAAAAAAAAAAAAAAAAAA", "M")]
    public void The_decoder_finds_the_level_that_was_promised(string text, string level) =>
        Assert.Equal((text, level), Scanner.Scan(PngReader.Read(TagQr.Of(text).ToPng(4))));

    [Theory]
    [InlineData("https://tag.example/t/7K2M9Q4TXAV?x=1")]
    [InlineData("https://tag.example/t/7K2M_9Q4T")]
    [InlineData("https://straße.example/t/7K2M9Q4TXAV")]
    [InlineData("https://tag.example/t/7K2M\n")]
    [InlineData("")]
    public void What_the_alphanumeric_mode_does_not_have_is_refused(string address) =>
        Assert.Throws<ArgumentException>(() => TagQr.Of(address));

    [Fact]
    public void An_address_of_more_than_200_characters_is_refused()
    {
        Assert.Equal(200, TagQr.Of(new string('A', 200)).Text.Length);
        Assert.Throws<ArgumentException>(() => TagQr.Of(new string('A', 201)));
        Assert.Throws<ArgumentException>(() => TagQr.Of(new string('A', 5_000_000)));
    }
}
