using System.Collections.Concurrent;
using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Cast;

/// <summary>Data folders for one test after the other: Dapper compiles a query again for each path of a database.</summary>
public static class TestFolders
{
    private static readonly ConcurrentBag<string> Free = [];

    public static DataFolder Lend() =>
        new(Free.TryTake(out var root) ? root : Path.Combine(Path.GetTempPath(), "tagpage-test-" + Guid.NewGuid().ToString("N")));

    public static void TakeBack(DataFolder folder)
    {
        Directory.Delete(folder.Root, recursive: true);
        Free.Add(folder.Root);
    }
}
