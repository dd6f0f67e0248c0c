using System.Reflection;
using TagPage.Records.Jobs;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Privacy;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Tests.Words;

/// <summary>No reason is given to somebody for whom it has no words.</summary>
public sealed class RefusalWordsTests
{
    /// <summary>What the own page's writes answer with. Whatever is not here is the shop's alone; a new reason has to be put on a side.</summary>
    private static readonly Type[] Clients =
    [
        typeof(SavedMeanwhile), typeof(FormKeyUnknown), typeof(HoursUnlikely), typeof(DayFull), typeof(PlayedInFuture), typeof(PitchUnlikely), typeof(RoleNotTheirs),
        typeof(DaysUnlikely), typeof(LostInFuture), typeof(LostLongAgo), typeof(LostAway), typeof(LostNoteUnfit), typeof(NothingToShow), typeof(RacketAtShop), typeof(OrderedEnough),
        typeof(NeverStrung), typeof(RacketGone), typeof(OrderUnderWay), typeof(ReachMissing), typeof(SaidEnough), typeof(TicketOpen), typeof(TicketsOpen),
        typeof(CodeRanOut), typeof(CodeWrong), typeof(CodeOver), typeof(CodesEnough), typeof(NoAddressOnFile), typeof(FinderAnswered), typeof(StopUnknown), typeof(LoanOpen),
    ];

    /// <summary>Given to clients alone: a finder's, a household's or a browser's own business.</summary>
    private static readonly Type[] NotTheShops =
    [
        typeof(PitchUnlikely), typeof(RoleNotTheirs), typeof(RacketAtShop), typeof(OrderedEnough), typeof(NeverStrung), typeof(RacketGone),
        typeof(OrderUnderWay), typeof(ReachMissing), typeof(SaidEnough), typeof(TicketOpen), typeof(CodeRanOut), typeof(CodeWrong), typeof(CodeOver),
        typeof(CodesEnough), typeof(FinderAnswered),
    ];

    public static TheoryData<string> Reasons => [.. All.Select(t => t.Name)];

    private static IEnumerable<Type> All => typeof(Refusal).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Refusal)) && !t.IsAbstract);

    [Theory]
    [MemberData(nameof(Reasons))]
    public void Reason_has_words_for_everybody_it_is_given_to_and_for_nobody_else(string name)
    {
        var type = All.Single(t => t.Name == name);
        Assert.True(!Clients.Contains(type) || Made(type).Any());
        foreach (var why in Made(type))
        {
            foreach (var language in OwnPageWords.Spoken)
                Assert.Equal(Clients.Contains(type), IsWorded(() => OwnPageRefusals.Of(why, language)));
            Assert.Equal(!NotTheShops.Contains(type), IsWorded(() => ShopRefusals.Of(why)));
        }
    }

    [Fact]
    public void Numbers_of_a_reason_stand_in_its_words()
    {
        foreach (var why in new Refusal[] { new HoursUnlikely(17), new OrderedEnough(17), new SaidEnough(17) })
            Assert.All(OwnPageWords.Spoken, language => Assert.Contains("17", OwnPageRefusals.Of(why, language), StringComparison.Ordinal));
    }

    private static bool IsWorded(Func<string> words)
    {
        try
        {
            var sentence = words();
            Assert.NotEmpty(sentence);
            Assert.DoesNotContain('{', sentence);
            return true;
        }
        catch (ArgumentOutOfRangeException)
        {
            return false;
        }
    }

    /// <summary>A reason with data of its kinds, one that has an enumeration once for each of its values; none where the data is a whole record.</summary>
    private static IEnumerable<Refusal> Made(Type type)
    {
        var needs = type.GetConstructors().Single(c => c.GetParameters() is not [{ ParameterType: var first }] || first != type).GetParameters();
        var variants = needs.Select(p => Values(p.ParameterType).ToList()).ToList();
        if (variants.Any(v => v.Count == 0))
            yield break;
        for (var n = 0; n < variants.Select(v => v.Count).DefaultIfEmpty(1).Max(); n++)
            yield return (Refusal)Activator.CreateInstance(type, BindingFlags.Default, null, [.. variants.Select(v => v[n % v.Count])], null)!;
    }

    private static IEnumerable<object?> Values(Type given)
    {
        var type = Nullable.GetUnderlyingType(given) ?? given;
        return type == typeof(string) ? ["Pim"]
            : type.IsEnum ? Enum.GetValues(type).Cast<object>()
            : type == typeof(DateOnly) ? [new DateOnly(2026, 11, 25)]
            : type.IsPrimitive || type == typeof(decimal) ? [Convert.ChangeType(7, type, System.Globalization.CultureInfo.InvariantCulture)]
            : [];
    }
}
