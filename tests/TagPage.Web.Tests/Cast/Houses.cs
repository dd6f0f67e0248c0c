using System.Collections.Concurrent;

[assembly: AssemblyFixture(typeof(TagPage.Web.Tests.Cast.Houses))]

namespace TagPage.Web.Tests.Cast;

/// <summary>
/// Starting the program costs more than most tests do, so a house is lent again when a shop moves out, to the next one
/// with the same settings.
/// </summary>
public sealed class Houses : IDisposable
{
    private static readonly ConcurrentDictionary<string, ConcurrentBag<House>> Empty = new();

    public static House Rent(TestShop shop)
    {
        var house = EmptyFor(shop).TryTake(out var empty) ? empty : House.Shared(shop);
        house.MoveIn(shop);
        return house;
    }

    public static void Return(House house, TestShop shop)
    {
        house.MoveOut();
        EmptyFor(shop).Add(house);
    }

    private static ConcurrentBag<House> EmptyFor(TestShop shop) =>
        Empty.GetOrAdd(string.Join('\n', shop.Settings.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key}={s.Value}").Append($"{shop.HashRounds}")), _ => []);

    public void Dispose()
    {
        foreach (var house in Empty.Values.SelectMany(houses => houses))
            house.Dispose();
        Template.Delete();
    }
}
