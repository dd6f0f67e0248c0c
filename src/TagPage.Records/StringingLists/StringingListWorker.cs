using TagPage.Records.Storage;

namespace TagPage.Records.StringingLists;

/// <summary>Brings lists in and takes them back in the background, in small steps with room for others between them.</summary>
public sealed class StringingListWorker(StringingListStore lists, ListWriteStore writes, TakeBackStore backs, TimeProvider clock, ILogger<StringingListWorker> log)
    : PeriodicWork(TimeSpan.FromSeconds(1), clock, log, "A list of stringings could not go on; it is tried again.")
{
    /// <summary>Works off everything that waits.</summary>
    public void Round()
    {
        while (lists.AtWork() is var (list, state))
        {
            if (state == StringingListState.Coming)
                writes.Step(list);
            else
                backs.Step(list);
            Thread.Sleep(1);
        }
    }

    protected override void Work() => Round();
}
