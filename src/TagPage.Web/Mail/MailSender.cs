using MailKit.Net.Smtp;
using TagPage.Records.Outbox;

namespace TagPage.Web.Mail;

/// <summary>
/// Sends what is in the outbox. An email is claimed in a committed write, handed to the carrier, and marked with what
/// became of it; one that stays claimed is not sent again by this process.
/// </summary>
public sealed class MailSender(OutboxStore outbox, DeliveryStore store, Deliveries fates, MailWriter writer, IMailCarrier carrier, TimeProvider clock, ILogger<MailSender> log)
    : BackgroundService
{
    /// <summary>The longest sleep, so that email queued meanwhile is not forgotten.</summary>
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(5);

    /// <summary>After this long an email that the server keeps waiting no longer holds up those behind it.</summary>
    private static readonly TimeSpan Turn = TimeSpan.FromSeconds(20);

    /// <summary>Of one lane at the same time, while the server lets them wait.</summary>
    private const int MostUnderWay = 8;

    protected override Task ExecuteAsync(CancellationToken stoppingToken) => Task.WhenAll(MailLane.All.Select(lane => Work(lane, stoppingToken)));

    private async Task Work(MailLane lane, CancellationToken stop)
    {
        var underWay = new List<Task>();
        while (!stop.IsCancellationRequested)
        {
            try
            {
                await SendWaiting(lane, underWay, stop);
            }
            catch (Exception e)
            {
                if (!stop.IsCancellationRequested)
                    log.LogError(e, "The mail room could not read or mark its outbox; it goes on in a moment.");
            }
            // When told to stop it just stops: the host would report any exception as a crash.
            await Task.Delay(Look, clock, stop).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
        await Task.WhenAll(underWay);
    }

    /// <summary>Sends everything that may be sent now.</summary>
    public Task SendAll(CancellationToken cancel) => Task.WhenAll(MailLane.All.Select(async lane =>
    {
        var underWay = new List<Task>();
        await SendWaiting(lane, underWay, cancel);
        await Task.WhenAll(underWay);
    }));

    private async Task SendWaiting(MailLane lane, List<Task> underWay, CancellationToken cancel)
    {
        fates.CatchUp();
        while (!cancel.IsCancellationRequested && outbox.Claim(lane) is { } row)
        {
            var sending = Send(row, cancel);
            underWay.Add(sending);
            await sending.WaitAsync(Turn, clock, cancel).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            if (underWay.Count >= MostUnderWay)
                await Task.WhenAny(underWay);
            underWay.RemoveAll(s => s.IsCompleted);
            fates.CatchUp();
        }
    }

    private async Task Send(OutboxStore.Row row, CancellationToken cancel)
    {
        try
        {
            await carrier.Carry(writer.Write(row), cancel);
        }
        catch (UnknownFateException e)
        {
            fates.Note(() => store.Unknown(row.Id, e.Message));
            log.LogWarning("Mail {Id} may have gone out ({Kind}, try {Try}): {Error}", row.Id, row.Kind, row.Tries + 1, e.Message);
            return;
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            fates.Note(() => store.NotTried(row.Id));
            return;
        }
        catch (Exception e)
        {
            var final = e is UndeliverableException or SmtpCommandException { StatusCode: >= SmtpStatusCode.CommandUnrecognized };
            fates.Note(() => store.NotSent(row, e.Message, final, RefusedAddress.Is(e)));
            log.LogWarning("Mail {Id} did not go out ({Kind}, try {Try}, {Error}).", row.Id, row.Kind, row.Tries + 1, e.GetType().Name);
            return;
        }
        var at = clock.GetUtcNow();
        fates.Note(() => store.Sent(row.Id, at));
    }
}
