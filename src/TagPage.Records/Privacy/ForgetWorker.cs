using TagPage.Records.Storage;

namespace TagPage.Records.Privacy;

/// <summary>Deletes the data of those who asked for it when their days of grace are over.</summary>
public sealed class ForgetWorker(ForgetStore store, EraseStore erase, TimeProvider clock, ILogger<ForgetWorker> log) : PeriodicWork(TimeSpan.FromHours(1), clock, log,
        "A client who asked to be forgotten could not be; it is tried again in an hour.")
{
    public void ForgetAll()
    {
        foreach (var client in store.Due())
            erase.Erase(client);
    }

    protected override void Work() => ForgetAll();
}
