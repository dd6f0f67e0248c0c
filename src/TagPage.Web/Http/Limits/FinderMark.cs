using TagPage.Records.Storage;

namespace TagPage.Web.Http.Limits;

/// <summary>
/// Stands for a finder's network in the records: the same mark for the same source, so that presses can be counted
/// across restarts, and no way back to the address without this server's key.
/// </summary>
public sealed class FinderMark(DataFolder folder)
{
    private readonly byte[] _key = ServerKey.ReadOrMake(Path.Combine(folder.Keys, "finders.key"));

    public string Of(HttpContext context) => Source.Mark(context, _key, bytes: 16);
}
