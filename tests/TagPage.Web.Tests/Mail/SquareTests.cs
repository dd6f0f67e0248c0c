using MimeKit;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Mail;

/// <summary>An email that a racket is ready brings the square to pay with, where something is open and the shop’s account can be named.</summary>
public sealed class SquareTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _job;

    public SquareTests()
    {
        _shop.Records.Shop();
        (_, _, _, _, _job) = _shop.Records.Family();
        _shop.Records.Change($"""
            UPDATE shop SET currency = 'EUR', mail = 'shop@ferrygate.example', name = 'Ferrygate Racket Bench';
            UPDATE client SET mail = 'odalys@canary.example', payer_id = NULL;
            UPDATE job SET state = 'Strung', collected_on = NULL, paid_on = NULL, price_minor = 2450;
            INSERT INTO money_setting (id, iban) VALUES (1, 'DE89370400440532013000');
            """);
    }

    public void Dispose() => _shop.Dispose();

    private MimeMessage Mail(string before = "")
    {
        Assert.IsType<Outcome.Done>(_shop.Get<ReadyStore>().Tell(Who.Shop, _job));
        if (before.Length > 0)
            _shop.Records.Change(before);
        return _shop.Get<MailWriter>().Write(_shop.Get<OutboxStore>().Claim(MailLane.AllElse)!);
    }

    private static MimePart? Picture(MimeMessage mail) => mail.BodyParts.OfType<MimePart>().SingleOrDefault(part => part.ContentType.IsMimeType("image", "png"));

    [Fact]
    public void Square_lies_in_the_email_itself_and_the_words_say_the_same()
    {
        var mail = Mail();

        const string Words = "To pay by transfer: €24.50 to Ferrygate Racket Bench, DE89 3704 0044 0532 0130 00, with “1001” as its reference.";
        Assert.EndsWith(Words, mail.TextBody!.ReplaceLineEndings("\n").TrimEnd(), StringComparison.Ordinal);
        var picture = Picture(mail)!;
        Assert.Contains($"<img src=\"cid:{picture.ContentId}\" alt=\"Scan this with your bank’s app to pay €24.50\">", System.Net.WebUtility.HtmlDecode(mail.HtmlBody), StringComparison.Ordinal);
        Assert.Contains(Words, System.Net.WebUtility.HtmlDecode(mail.HtmlBody), StringComparison.Ordinal);
        Assert.DoesNotContain("http", mail.HtmlBody, StringComparison.Ordinal);
        Assert.Equal(ContentDisposition.Inline, picture.ContentDisposition!.Disposition);
        using var bytes = new MemoryStream();
        picture.Content!.DecodeTo(bytes, TestContext.Current.CancellationToken);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], bytes.ToArray()[..4]);
        var related = Assert.IsType<MultipartRelated>(Assert.IsType<MultipartAlternative>(mail.Body)[1]);
        Assert.Same(picture, related[1]);
    }

    [Fact]
    public void Swiss_QR_account_is_paid_with_a_reference_in_square_and_words()
    {
        var mail = Mail("UPDATE shop SET currency = 'CHF', country = 'CH', town = '8004 Zürich'; UPDATE money_setting SET iban = 'CH4431999123000889012'");

        Assert.NotNull(Picture(mail));
        Assert.Matches(@"CH44 3199 9123 0008 8901 2, with “00 00000 00000 00000 00002 1001\d” as its reference\.", mail.TextBody!);
    }

    [Theory]
    [InlineData("UPDATE job SET paid_on = '2026-11-25'")]
    [InlineData("UPDATE job SET price_minor = NULL")]
    [InlineData("UPDATE job SET price_minor = 0")]
    [InlineData("INSERT INTO payer (id, name) VALUES (7, 'Hall Academy'); UPDATE client SET payer_id = 7")]
    [InlineData("UPDATE money_setting SET iban = NULL")]
    [InlineData("UPDATE shop SET currency = 'GBP'")]
    public void Without_anything_to_pay_or_a_way_there_is_none(string before)
    {
        var mail = Mail(before);

        Assert.Null(Picture(mail));
        Assert.DoesNotContain("transfer", mail.TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_emails_have_none()
    {
        Assert.IsType<Outcome.Done>(_shop.Get<ReadyStore>().Tell(Who.Shop, _job));
        _shop.Records.Change("UPDATE job SET told_mail_id = NULL");

        Assert.Null(Picture(_shop.Get<MailWriter>().Write(_shop.Get<OutboxStore>().Claim(MailLane.AllElse)!)));
    }

    [Theory]
    [InlineData("de", "Zum Überweisen: 24,50 € an")]
    [InlineData("ja", "お振込みの場合：")]
    public void Words_are_in_the_clients_language(string language, string words)
    {
        _shop.Records.Change("UPDATE client SET language = @language", new { language });

        Assert.Contains(words, Mail().TextBody!.Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Swiss_account_brings_its_own_square_in_francs()
    {
        _shop.Records.Change("UPDATE shop SET currency = 'CHF', street = 'Seestrasse 12', town = '8004 Zürich', country = 'CH'; UPDATE money_setting SET iban = 'CH9300762011623852957'");

        Assert.NotNull(Picture(Mail()));
        Assert.StartsWith("SPC\n0200\n1\nCH9300762011623852957", _shop.Get<MailSquares>().Of(1)!.Square.Payload.ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }
}
