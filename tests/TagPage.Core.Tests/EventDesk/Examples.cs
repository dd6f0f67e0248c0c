using System.Globalization;

namespace TagPage.Core.Tests.EventDesk;

/// <summary>Jobs as textbooks write them, and every way to order a few.</summary>
internal static class Examples
{
    public static (int Minutes, int Due)[] Read(string minutes, string due) =>
        [.. Numbers(minutes).Zip(Numbers(due))];

    public static int[] Numbers(string text) => [.. text.Split(' ').Select(number => int.Parse(number, CultureInfo.InvariantCulture))];

    public static IEnumerable<IReadOnlyList<T>> Orders<T>(IReadOnlyList<T> items)
    {
        if (items.Count == 0)
            return [[]];
        return items.SelectMany((first, at) =>
            Orders([.. items.Where((_, other) => other != at)]).Select(rest => (IReadOnlyList<T>)[first, .. rest]));
    }
}
