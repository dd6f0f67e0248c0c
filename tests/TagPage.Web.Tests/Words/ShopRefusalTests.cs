using TagPage.Records.Jobs;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

/// <summary>Whatever the records can say of a job or a reading, the shop has a sentence for it; without one the page would break.</summary>
public sealed class ShopRefusalTests
{
    /// <summary>Said to households alone, who have their own words.</summary>
    private static readonly Type[] NotToTheShop = [typeof(PitchUnlikely)];

    public static TheoryData<Type> Refusals() => [.. Kinds<Refusal>().Except(NotToTheShop)];

    public static TheoryData<Type> Oddities() => [.. Kinds<Oddity>()];

    /// <summary>Those of these nouns, and everything that can be odd.</summary>
    private static IEnumerable<Type> Kinds<T>() =>
        from kind in typeof(T).Assembly.GetTypes()
        where kind.IsSubclassOf(typeof(T))
            && (typeof(T) == typeof(Oddity) || kind.Namespace == typeof(JobRow).Namespace || kind.Namespace == typeof(ReadingRow).Namespace)
        select kind;

    [Theory]
    [MemberData(nameof(Refusals))]
    public void Every_reason_has_a_sentence(Type kind) => Assert.EndsWith(".", ShopRefusals.Of((Refusal)Make(kind)), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Oddities))]
    public void Every_question_has_a_sentence(Type kind) => Assert.EndsWith(".", ShopQuestions.Of((Oddity)Make(kind)), StringComparison.Ordinal);

    private static object Make(Type kind)
    {
        var constructor = Assert.Single(kind.GetConstructors());
        return constructor.Invoke([.. constructor.GetParameters().Select(parameter => Value(parameter.ParameterType))]);
    }

    private static object? Value(Type type) =>
        type == typeof(string) ? "Input"
        : type == typeof(ShopDetails) ? new ShopDetails { Currency = "GBP" }
        : type == typeof(IReadOnlyList<int>) ? new[] { 3, 7 }
        : type.IsValueType ? Activator.CreateInstance(type)
        : throw new ArgumentException($"Say what a {type.Name} is to this test.", nameof(type));
}
