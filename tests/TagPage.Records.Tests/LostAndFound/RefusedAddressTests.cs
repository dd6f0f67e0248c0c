using TagPage.Core.Tags;
using TagPage.Records.LostAndFound;
using TagPage.Records.Outbox;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.LostAndFound;

/// <summary>A finder's words when nobody has the guardian's address any more.</summary>
public sealed class RefusedAddressTests : IDisposable
{
    private readonly Street _street = new();
    private readonly TagCode _code;

    public RefusedAddressTests()
    {
        _code = TagCode.Parse(_street.Records.Text("SELECT code FROM tag WHERE state = 'Live'"));
        _street.Records.Change("UPDATE client SET found_choice = 'Message', found_choice_on = '2026-11-01'");
    }

    public void Dispose() => _street.Dispose();

    private OutboxStore Outbox => new(_street.Database, _street.Time);

    private DeliveryStore Deliveries => new(_street.Database, _street.Time);

    private FoundResult Write(string words)
    {
        _street.Time.Advance(TimeSpan.FromMinutes(1));
        return new FoundEventStore(_street.Database, new FoundNoticeStore(Outbox, new Mails()))
            .Take(new FinderPress(_code, FoundKind.Message, words, new string(words[0], 32), _street.Time.GetUtcNow()) { Message = words }).Result;
    }

    private OutboxStore.Row Next() => Outbox.Claim(MailLane.AllElse)!;

    [Fact]
    public void Shop_is_told_instead_once_the_address_was_refused_and_the_finder_hears_so()
    {
        Assert.Equal(FoundResult.Done, Write("At the desk"));
        Deliveries.NotSent(Next(), "550 No such user here", final: true, nobodyThere: true);

        Assert.Equal(FoundResult.ByShop, Write("Still here"));
        Assert.Equal("bench@ferrygate.example", Next().ToMail);
    }

    [Theory]
    [InlineData("UPDATE client SET mail = 'odalys@new.example' WHERE mail_refused IS NOT NULL", FoundResult.Done)]
    [InlineData("UPDATE client SET mail = NULL WHERE mail_refused IS NOT NULL", FoundResult.ByShop)]
    [InlineData("UPDATE client SET note = 'x' WHERE mail_refused IS NOT NULL", FoundResult.ByShop)]
    public void Refusal_is_of_the_address_and_not_of_the_client(string since, FoundResult result)
    {
        Write("At the desk");
        Deliveries.NotSent(Next(), "550 No such user here", final: true, nobodyThere: true);
        _street.Records.Change(since);

        Assert.Equal(result, Write("Still here"));
    }

    [Fact]
    public void Server_that_is_down_or_takes_the_next_email_says_nothing_against_the_address()
    {
        Write("At the desk");
        var mail = Next();
        Deliveries.NotSent(mail, "421 Try later", final: false);
        Assert.Equal(FoundResult.Done, Write("Still here"));

        _street.Records.Change("UPDATE client SET mail_refused = mail");
        Deliveries.Sent(mail.Id, _street.Time.GetUtcNow());
        Assert.Equal(FoundResult.Done, Write("Both here"));
    }
}
