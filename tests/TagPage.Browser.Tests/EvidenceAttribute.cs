using System.Collections.Concurrent;
using System.Reflection;
using TagPage.Browser.Tests;
using Xunit.v3;

[assembly: Evidence]

namespace TagPage.Browser.Tests;

/// <summary>Ends a test's journeys once it is known how the test went: of one that failed, what was on the screens is kept.</summary>
[AttributeUsage(AttributeTargets.Assembly)]
public sealed class EvidenceAttribute : BeforeAfterTestAttribute
{
    private static readonly ConcurrentDictionary<string, ConcurrentQueue<Journey>> Open = new();

    /// <summary>Of the test that runs now.</summary>
    internal static void Watch(Journey journey) => Open.GetOrAdd(TestContext.Current.Test!.UniqueID, _ => []).Enqueue(journey);

    public override void After(MethodInfo methodUnderTest, IXunitTest test)
    {
        if (!Open.TryRemove(test.UniqueID, out var journeys))
            return;
        var failed = TestContext.Current.TestState?.Result == TestResult.Failed;
        Task.Run(() => End(journeys, failed ? methodUnderTest.Name : null)).GetAwaiter().GetResult();
    }

    private static async Task End(IEnumerable<Journey> journeys, string? evidence)
    {
        foreach (var (index, journey) in journeys.Index())
            await journey.End(evidence is null ? null : $"{evidence}-{index + 1}");
    }
}
