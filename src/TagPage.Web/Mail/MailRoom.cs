using MailKit.Net.Smtp;

namespace TagPage.Web.Mail;

/// <summary>
/// Sends what stands in the outbox, one mail after the other. A row is marked sent only after the carrier took it: a
/// stop in between sends the same mail with the same Message-ID once more, and never none.
/// </summary>
public sealed class MailRoom(OutboxStore outbox, MailWriter writer, IMailCarrier carrier, TimeProvider clock, ILogger<MailRoom> log)
    : BackgroundService
{
    /// <summary>The longest the room sleeps, so that mail queued meanwhile is not forgotten.</summary>
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(5);

    private readonly SemaphoreSlim _one = new(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await SendAll(stoppingToken);
            }
            catch (Exception e)
            {
                if (!stoppingToken.IsCancellationRequested)
                    log.LogError(e, "The mail room could not read or mark its outbox; it goes on in a moment.");
            }
            // Told to stop it just stops: the host would report anything thrown as a crash.
            await Task.Delay(Look, clock, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }

    /// <summary>Sends everything that may go now.</summary>
    public async Task SendAll(CancellationToken cancel)
    {
        await _one.WaitAsync(cancel);
        try
        {
            while (!cancel.IsCancellationRequested && outbox.Next() is { } row)
                await Send(row, cancel);
        }
        finally
        {
            _one.Release();
        }
    }

    public override void Dispose()
    {
        // First the stop, so that nobody comes back to a lock that is gone.
        base.Dispose();
        _one.Dispose();
    }

    private async Task Send(OutboxStore.Row row, CancellationToken cancel)
    {
        try
        {
            await carrier.Carry(writer.Write(row), cancel);
        }
        catch (Exception e) when (!cancel.IsCancellationRequested)
        {
            var final = e is UndeliverableException or SmtpCommandException { StatusCode: >= SmtpStatusCode.CommandUnrecognized };
            outbox.NotSent(row, e.Message, final);
            log.LogWarning("Mail {Id} did not go out ({Kind}, try {Try}, {Error}).", row.Id, row.Kind, row.Tries + 1, e.GetType().Name);
            return;
        }
        outbox.Sent(row.Id);
    }
}
