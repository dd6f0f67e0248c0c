using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What must hold of an ordered job before it is saved.</summary>
internal static class JobRules
{
    public static IEnumerable<FieldFault> Of(JobInput input, Sport sport, ShopDetails shop) =>
        [.. NewString(input), .. Tensions(input, sport), .. Price(input, shop)];

    private static IEnumerable<FieldFault> NewString(JobInput input)
    {
        var made = input.NewString;
        if (input.MainsId is null && !(made.IsGiven && made.Place != NewStringPlace.Crosses))
            yield return new(nameof(input.MainsId), "Choose the string of the mains, or write a new one below.");
        if (!made.IsGiven)
            yield break;
        if (string.IsNullOrWhiteSpace(made.Name))
            yield return new("NewString.Name", "Write the new string's name.");
        if (made.Material is null)
            yield return new("NewString.Material", "Choose what the new string is made of.");
        if (made.GaugeMm is null)
            yield return new("NewString.GaugeMm", "Write the new string's diameter in mm, like 1.25.");
    }

    private static IEnumerable<FieldFault> Tensions(JobInput input, Sport sport)
    {
        if (Judge(sport, input.Mains) == TensionVerdict.Impossible)
            yield return new(nameof(input.MainsTension), Impossible(input.TensionUnit));
        if (input.CrossesTension is not null && Judge(sport, input.Crosses) == TensionVerdict.Impossible)
            yield return new(nameof(input.CrossesTension), Impossible(input.TensionUnit));
    }

    private static TensionVerdict? Judge(Sport sport, Tension? tension) =>
        tension is { } typed ? TensionCheck.Of(sport, typed) : null;

    private static string Impossible(TensionUnit unit) =>
        $"No machine pulls that. Write a tension between {In(TensionCheck.MinLb, unit)} and {In(TensionCheck.MaxLb, unit)} {EnglishNames.Of(unit)}.";

    /// <summary>
    /// A tension outside the sport's usual range is asked about, not blocked. Tensions as in <paramref name="asked"/>,
    /// the racket's last job or this one as saved, are not asked about again.
    /// </summary>
    public static IReadOnlyList<Question> Questions(JobInput input, Sport sport, JobRow? asked)
    {
        if (asked is not null && asked.Mains == input.Mains && asked.Crosses == input.Crosses)
            return [];
        var questions = new List<Question>();
        if (Judge(sport, input.Mains) == TensionVerdict.Unusual)
            questions.Add(new Question(nameof(input.MainsTension), Unusual(sport, input.Mains!.Value)));
        if (input.CrossesTension is not null && Judge(sport, input.Crosses) == TensionVerdict.Unusual)
            questions.Add(new Question(nameof(input.CrossesTension), Unusual(sport, input.Crosses!.Value)));
        return questions;
    }

    private static string Unusual(Sport sport, Tension tension)
    {
        var facts = SportFacts.Of(sport);
        return $"{tension} is unusual: {EnglishNames.Of(sport)} is mostly strung between {In(facts.UsualMinLb, tension.Unit)} and {In(facts.UsualMaxLb, tension.Unit)} {EnglishNames.Of(tension.Unit)}."
            + (tension.In(TensionUnit.Lb) > facts.UsualMaxLb
                ? " Above the range printed on the frame it can crack, and the maker's warranty can be void: ask the maker."
                : "");
    }

    private static string In(decimal lb, TensionUnit unit) => Formats.Number(new Tension(lb, TensionUnit.Lb).In(unit), 1);

    private static IEnumerable<FieldFault> Price(JobInput input, ShopDetails shop)
    {
        if (input.Price is { } price && Currencies.ToMinor(price, shop.Currency) is null)
            yield return new(nameof(input.Price), $"Write the price in {shop.Currency} like {Formats.Amount(2450, shop)}.");
    }
}
