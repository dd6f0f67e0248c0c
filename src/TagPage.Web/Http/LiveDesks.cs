using System.Collections.Concurrent;
using System.Globalization;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Threading.Channels;
using TagPage.Records.Storage;

namespace TagPage.Web.Http;

/// <summary>
/// Tells every tablet that looks at a desk when to look again. Nothing but a mark is sent; what changed is read from the
/// records, so that a tablet that missed something has missed nothing.
/// </summary>
public sealed class LiveDesks : IDisposable
{
    /// <summary>A tablet that hears nothing for twice as long is not live.</summary>
    public static readonly TimeSpan Beat = TimeSpan.FromSeconds(15);

    private readonly string _start = Guid.NewGuid().ToString("N")[..8];
    private readonly ConcurrentDictionary<long, long> _marks = new();
    private readonly ConcurrentDictionary<Channel<bool>, long> _ears = new();
    private readonly Changes _changes;

    public LiveDesks(Database database)
    {
        _changes = database.Changes;
        _changes.DeskChanged = Tell;
    }

    public int Listening => _ears.Count;

    /// <summary>Take it before reading the desk: what was read is at least as new.</summary>
    public string Mark(long desk) => string.Create(CultureInfo.InvariantCulture, $"{_start}-{_marks.GetValueOrDefault(desk)}");

    /// <summary>The mark at once, again after every change, and a beat in between.</summary>
    public async IAsyncEnumerable<SseItem<string>> Of(long desk, [EnumeratorCancellation] CancellationToken gone)
    {
        // A full channel means that the tablet will look again anyway.
        var ear = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });
        _ears[ear] = desk;
        try
        {
            yield return new SseItem<string>(Mark(desk), "desk");
            while (!gone.IsCancellationRequested)
            {
                var changed = await Hears(ear, gone);
                if (gone.IsCancellationRequested)
                    yield break;
                yield return new SseItem<string>(Mark(desk), changed ? "desk" : "beat");
            }
        }
        finally
        {
            _ears.TryRemove(ear, out _);
        }
    }

    private static async Task<bool> Hears(Channel<bool> ear, CancellationToken gone)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(gone);
        patience.CancelAfter(Beat);
        try
        {
            return await ear.Reader.ReadAsync(patience.Token);
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    private void Tell(long desk)
    {
        _marks.AddOrUpdate(desk, 1, (_, mark) => mark + 1);
        foreach (var (ear, listensTo) in _ears)
        {
            if (listensTo == desk)
                ear.Writer.TryWrite(true);
        }
    }

    public void Dispose() => _changes.DeskChanged = null;
}
