namespace TagPage.Records.Outbox;

/// <summary>
/// Records what became of emails. What cannot be written now, on a full or locked disk, is kept in memory and written
/// before the next email is claimed; until then the email stays claimed and is not sent again.
/// </summary>
public sealed class Deliveries
{
    private readonly Lock _lock = new();
    private readonly ILogger _log;

    /// <summary>In the order in which they happened, beginning with what an earlier process left behind.</summary>
    private readonly Queue<Action> _unwritten = new();

    public Deliveries(DeliveryStore store, ILogger<Deliveries> log)
    {
        _log = log;
        _unwritten.Enqueue(() => store.LeftBehind());
    }

    public void Note(Action write)
    {
        lock (_lock)
        {
            _unwritten.Enqueue(write);
            try
            {
                CatchUp();
            }
            catch (Exception e)
            {
                _log.LogError(e, "What became of a mail could not be written; no other mail leaves until it can.");
            }
        }
    }

    /// <summary>Writes what is still unwritten, or throws what prevents it.</summary>
    public void CatchUp()
    {
        lock (_lock)
        {
            while (_unwritten.TryPeek(out var write))
            {
                write();
                _unwritten.Dequeue();
            }
        }
    }
}
