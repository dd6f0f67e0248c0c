using System.Globalization;
using Dapper;
using Microsoft.Playwright;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Browser.Tests;

/// <summary>The own page listens to strings: synthesised taps come in through Chromium's fake microphone.</summary>
[Long]
public sealed class ListenTests(DemoStage stage, OneBrowser chromium) : IClassFixture<DemoStage>
{
    private const int Rate = 48_000;

    [Theory]
    [InlineData(412.7)]
    [InlineData(588.3)]
    [InlineData(1193.6)]
    public async Task Decaying_tones_with_noise_are_heard_to_within_one_hertz_and_no_sound_leaves_the_browser(double hertz)
    {
        var file = Path.Combine(Path.GetTempPath(), $"tagpage-taps-{Guid.NewGuid():N}.wav");
        await File.WriteAllBytesAsync(file, Taps(hertz), TestContext.Current.CancellationToken);
        await using var browser = await chromium.Start("--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream", "--use-file-for-fake-audio-capture=" + file);
        var page = await (await browser.NewContextAsync(new() { BaseURL = stage.Address })).NewPageAsync();
        await Enter(page);
        var posts = 0;
        page.Request += (_, request) => posts += request.Method == "POST" || request.Url.StartsWith("ws", StringComparison.Ordinal) ? 1 : 0;

        var say = OwnPageWords.Of(Languages.English).Play;
        await page.GetByRole(AriaRole.Button, new() { Name = say.ListenButton }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-listen] [role=status]")).ToContainTextAsync("5 of 5");

        var heard = double.Parse(await page.GetByLabel(say.Hertz).InputValueAsync(), CultureInfo.InvariantCulture);
        Assert.InRange(heard, hertz - 1, hertz + 1);
        Assert.Equal(0, posts);
        File.Delete(file);
    }

    private async Task Enter(IPage page)
    {
        var links = stage.Get<OwnPageLinkStore>();
        await page.GotoAsync(new Uri(stage.Get<OwnPageMails>().Address(links.Get(Assert.IsType<Outcome.Done>(links.Make(Who.Shop, 2)).Id)!)).PathAndQuery);
        await page.GetByRole(AriaRole.Button, new() { Name = OwnPageWords.Of(Languages.English).Link.EnterButton }).ClickAsync();
        await page.WaitForURLAsync("**/my");
        var racket = stage.Get<Database>().Read(c => c.QueryFirst<long>("SELECT r.id FROM racket r JOIN player p ON p.id = r.player_id JOIN forecast f ON f.racket_id = r.id WHERE p.client_id = 2 AND f.bed_id IS NOT NULL AND f.ended_on IS NULL AND r.state <> 'Sold'"));
        await page.GotoAsync($"/my/reading/{racket}");
    }

    /// <summary>Eight taps: a thud of 8 ms, then a tone that dies away, all in noise about 30 dB below. A WAV of 16-bit samples (RIFF).</summary>
    private static byte[] Taps(double hertz)
    {
        var random = new Random(7);
        var samples = new short[Rate * 12];
        for (var i = 0; i < samples.Length; i++)
        {
            var t = i / (double)Rate % 1.5 - 0.4;
            var tone = t < 0 ? 0 : 0.5 * Math.Exp(-t / 0.25) * Math.Sin(2 * Math.PI * hertz * t);
            var thud = t is >= 0 and < 0.008 ? 0.4 * (random.NextDouble() - 0.5) : 0;
            samples[i] = (short)(short.MaxValue * (tone + thud + 0.015 * (random.NextDouble() - 0.5)));
        }
        using var wav = new MemoryStream();
        using (var writer = new BinaryWriter(wav))
        {
            writer.Write("RIFF"u8);
            writer.Write(36 + samples.Length * 2);
            writer.Write("WAVEfmt "u8);
            writer.Write(16);
            writer.Write((short)1);
            writer.Write((short)1);
            writer.Write(Rate);
            writer.Write(Rate * 2);
            writer.Write((short)2);
            writer.Write((short)16);
            writer.Write("data"u8);
            writer.Write(samples.Length * 2);
            foreach (var sample in samples)
                writer.Write(sample);
        }
        return wav.ToArray();
    }
}
