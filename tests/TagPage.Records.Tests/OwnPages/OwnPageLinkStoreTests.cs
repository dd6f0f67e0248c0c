using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.OwnPages;

/// <summary>A private link for Odalys, made by the shop and emailed.</summary>
public sealed class OwnPageLinkStoreTests : IDisposable
{
    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("Queued", true)]
    [InlineData("Sent", true)]
    [InlineData("MaybeSent", true)]
    [InlineData("Failed", false)]
    public void Link_counts_as_emailed_unless_its_email_was_given_up(string state, bool emailed)
    {
        _street.Records.Change("UPDATE client SET mail = 'odalys@ferran.example' WHERE id = @Odalys", new { _street.Odalys });
        var links = new OwnPageLinkStore(_street.Database, new LinkTokens(_street.Folder), new OutboxStore(_street.Database, _street.Time), new Mails(), _street.Time);
        var link = Assert.IsType<Outcome.Done>(links.Make(Who.Shop, _street.Odalys)).Id;
        Assert.IsType<Outcome.Done>(links.Mail(Who.Shop, link));

        _street.Records.Change("UPDATE outbox SET state = @state, sent_at = CASE @state WHEN 'Sent' THEN made_at END", new { state });

        Assert.Equal(emailed, links.Get(link)!.MailedAt is not null);
    }
}
