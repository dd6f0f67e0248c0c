namespace TagPage.Web.Http.SignIn;

/// <summary>
/// Lets passwords be checked one after another, so that a flood of sign-ins leaves the processors to the pages. Browsers
/// that have signed in before have a queue of their own, which strangers cannot fill.
/// </summary>
public sealed class PasswordGate(TimeProvider clock) : IDisposable
{
    /// <summary>In one queue; whoever comes when so many are waiting is turned away at once.</summary>
    public const int MostWaiting = 20;

    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private readonly Queue _strangers = new(), _known = new();

    private sealed class Queue
    {
        public SemaphoreSlim Free { get; } = new(1);

        public int Inside;
    }

    /// <summary>Waits for a turn, which lasts until the answer is disposed of; null where none came in time.</summary>
    /// <param name="isKnown">The browser has signed in before.</param>
    /// <param name="gone">The visitor has left.</param>
    public async Task<IDisposable?> Enter(bool isKnown, CancellationToken gone)
    {
        var queue = isKnown ? _known : _strangers;
        if (Interlocked.Increment(ref queue.Inside) > 1 + MostWaiting || !await HasTurn(queue, gone))
        {
            Interlocked.Decrement(ref queue.Inside);
            return null;
        }
        return new Turn(queue);
    }

    private async Task<bool> HasTurn(Queue queue, CancellationToken gone)
    {
        using var patience = new CancellationTokenSource(Patience, clock);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(patience.Token, gone);
        try
        {
            await queue.Free.WaitAsync(either.Token);
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    public void Dispose()
    {
        _strangers.Free.Dispose();
        _known.Free.Dispose();
    }

    private sealed class Turn(Queue queue) : IDisposable
    {
        public void Dispose()
        {
            queue.Free.Release();
            Interlocked.Decrement(ref queue.Inside);
        }
    }
}
