using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>Once a day deletes what finders left more than 30 days ago.</summary>
public sealed class FoundSweeper(FoundWipeStore store, TimeProvider clock, ILogger<FoundSweeper> log) : PeriodicWork(TimeSpan.FromDays(1), clock, log,
        "What finders left more than 30 days ago could not be wiped; it is tried again tomorrow.")
{
    /// <summary>Wipes what is due by now.</summary>
    public void Sweep() => store.Wipe(Clock.GetUtcNow() - FoundWipeStore.Kept, Clock.GetUtcNow());

    protected override void Work() => Sweep();
}
