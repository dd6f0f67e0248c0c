using Microsoft.Extensions.DependencyInjection;
using TagPage.Records.Outbox;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Mail;

/// <summary>Nothing that goes wrong on our side makes an email leave again and again.</summary>
public sealed class OnceTests : IAsyncDisposable
{
    private readonly MoodyServer _server = new();
    private readonly TestShop _shop;

    public OnceTests() => _shop = MailShop.Of(_server.Port);

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public async ValueTask DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task Mail_that_cannot_be_marked_as_sent_is_not_sent_again_and_marked_as_soon_as_that_works()
    {
        _server.SaysAt(MoodyServer.End, () => Task.FromResult<string?>(Break()));
        _shop.Queue();

        await _shop.Looks(12);

        Assert.Single(_server.Whole);
        Assert.NotEqual("Sent", _shop.MailStates());
        Mend();
        await _shop.Looks(2);
        Assert.Single(_server.Whole);
        Assert.Equal("Sent", _shop.MailStates());
    }

    [Fact]
    public async Task Disk_that_takes_no_claim_lets_no_mail_leave_until_it_does()
    {
        _shop.Queue();
        Break();

        await _shop.Looks(12);
        Assert.Empty(_server.Whole);

        Mend();
        await _shop.Looks(1);
        Assert.Single(_server.Whole);
        Assert.Equal("Sent", _shop.MailStates());
    }

    [Fact]
    public async Task Two_mail_rooms_on_one_outbox_send_each_mail_once()
    {
        for (var n = 0; n < 7; n++)
            _shop.Queue();
        var other = NewRoom();

        await Task.WhenAll(Task.Run(() => _shop.Get<MailSender>().SendAll(Token), Token), Task.Run(() => other.SendAll(Token), Token));

        Assert.Equal(7, _server.Whole.Select(m => m.MessageId).Distinct().Count());
        Assert.Equal(7, _server.Whole.Count);
    }

    [Fact]
    public async Task Mail_on_its_way_when_the_program_died_goes_once_more_after_a_rest_under_the_same_message_id_and_no_third_time()
    {
        _server.SaysAt(MoodyServer.End, () => Task.FromResult<string?>(Break()));
        _shop.Queue();
        await _shop.Looks(1);
        // The first process is gone with what it had in memory; two more come and go in the same way.
        Mend();

        var second = NewRoom();
        await second.SendAll(Token);
        Assert.Equal("Queued", _shop.MailStates());
        Assert.Single(_server.Whole);
        _shop.Clock.Advance(DeliveryStore.Rest);
        await Assert.ThrowsAnyAsync<Exception>(() => second.SendAll(Token));
        Mend();
        Assert.Equal("Leaving", _shop.MailStates());

        var third = NewRoom();
        for (var n = 0; n < 3; n++)
        {
            await third.SendAll(Token);
            _shop.Clock.Advance(TimeSpan.FromDays(1));
        }
        Assert.Equal("MaybeSent", _shop.MailStates());
        Assert.Equal(2, _server.Whole.Count);
        Assert.Single(_server.Whole.Select(m => m.MessageId).Distinct());
    }

    /// <summary>The mail sender of another process: nothing in memory.</summary>
    private MailSender NewRoom() => ActivatorUtilities.CreateInstance<MailSender>(_shop.Services, ActivatorUtilities.CreateInstance<Deliveries>(_shop.Services));

    /// <summary>Nothing can be written to the outbox any more, as on a full or locked disk.</summary>
    private string? Break()
    {
        _shop.Records.Change("CREATE TRIGGER stuck BEFORE UPDATE ON outbox BEGIN SELECT RAISE(ABORT, 'disk full'); END");
        return null;
    }

    private void Mend() => _shop.Records.Change("DROP TRIGGER stuck");
}
