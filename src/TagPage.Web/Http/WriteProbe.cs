using System.Data.Common;
using TagPage.Records.Storage;

namespace TagPage.Web.Http;

/// <summary>Whether the database can be written: tested on request, but not again within seconds, since anybody may ask.</summary>
public sealed class WriteProbe(Database database, TimeProvider clock, ILogger<WriteProbe> log)
{
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(10);

    private readonly Lock _one = new();
    private long? _tried;
    private bool _works;

    public bool Works()
    {
        lock (_one)
        {
            if (_tried is not { } tried || clock.GetElapsedTime(tried) >= Rest)
                (_works, _tried) = (Try(), clock.GetTimestamp());
            return _works;
        }
    }

    private bool Try()
    {
        try
        {
            database.TryWriting();
            return true;
        }
        catch (DbException e)
        {
            log.LogError(e, "The database cannot be written.");
            return false;
        }
    }
}
