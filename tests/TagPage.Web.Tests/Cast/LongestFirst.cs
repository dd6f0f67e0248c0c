using System.Reflection;
using TagPage.Web.Tests.Cast;
using Xunit.Sdk;
using Xunit.v3;

[assembly: TestCollectionOrderer(typeof(LongestFirst))]

namespace TagPage.Web.Tests.Cast;

/// <summary>A class that takes many seconds: it begins before the others.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class LongAttribute : Attribute;

/// <summary>A long class that began last would run on one processor while the others have nothing left to do.</summary>
public sealed class LongestFirst : ITestCollectionOrderer
{
    private static readonly IReadOnlyList<string> Long =
        [.. typeof(LongestFirst).Assembly.GetTypes().Where(type => type.GetCustomAttribute<LongAttribute>() is not null).Select(type => type.FullName!)];

    public IReadOnlyCollection<TTestCollection> OrderTestCollections<TTestCollection>(IReadOnlyCollection<TTestCollection> testCollections)
        where TTestCollection : ITestCollection => [.. testCollections.OrderByDescending(IsLong)];

    /// <summary>xUnit names the collection of a class after it.</summary>
    private static bool IsLong<TTestCollection>(TTestCollection collection)
        where TTestCollection : ITestCollection => Long.Any(name => collection.TestCollectionDisplayName.Contains($" {name} ", StringComparison.Ordinal));
}
