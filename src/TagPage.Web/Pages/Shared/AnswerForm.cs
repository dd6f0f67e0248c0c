using TagPage.Core.Forecast;
using TagPage.Core.Text;
using TagPage.Records.Players;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shared;

/// <summary>What the answer form shows, on the private page and where the owner notes what was said on the phone.</summary>
public sealed record AnswerForm(AnswerInput Input, IReadOnlyList<AnswerForm.Item> Items, Language Language, ShopDetails Shop)
{
    public sealed record Item(ReminderRacket Racket, string Name, RestringBy By);

    public static AnswerForm Of(AnswerInput input, IReadOnlyList<ReminderRacket> rackets, Language language, DateOnly today, ShopDetails shop)
    {
        var names = GivenNames.Of(rackets.Select(r => r.Player));
        return new AnswerForm(input, [.. rackets.Select(r => new Item(r, Name(r, names[r.Player], language), r.Work(today, shop.StartingValues)))], language, shop);
    }

    /// <summary>"Pim, racket 2".</summary>
    public static string Name(ReminderRacket racket, string player, Language language) =>
        language.Phrases.Trade.RacketOf.Fill(("player", player), ("number", $"{racket.Number}"));

    /// <summary>Where in the form a racket's fields stand.</summary>
    public int IndexOf(Item item) => Input.Rackets.FindIndex(r => r.RacketId == item.Racket.RacketId);

    /// <summary>The racket a field belongs to, where there are several.</summary>
    public string? WhoseField(string field) => Items.Count < 2 ? null
        : Items.FirstOrDefault(item => IndexOf(item) is var index and >= 0 && field.StartsWith($"Input.Rackets[{index}].", StringComparison.Ordinal))?.Name;

    public string? Strings(ReminderRacket racket) => racket is { Mains: { } mains, Crosses: { } crosses }
        ? (mains, racket.LastMainsGaugeMm) == (crosses, racket.LastCrossesGaugeMm)
            ? Language.StringName(mains, racket.LastMainsGaugeMm!.Value)
            : $"{Language.StringName(mains, racket.LastMainsGaugeMm!.Value)} / {Language.StringName(crosses, racket.LastCrossesGaugeMm!.Value)}"
        : null;

    /// <summary>Whether one choice for all is offered: where several can still be answered.</summary>
    public bool HasSeveral => Items.Count(item => item.Racket.IsOpen) > 1;

    /// <summary>"The same again: 52 / 50 lb · £24.50".</summary>
    public string AnswerName(AnswerKind kind, ReminderRacket racket)
    {
        var tensions = racket is { MainsTension: { } mains, CrossesTension: { } crosses } ? Language.Tensions(mains, crosses, racket.TensionUnit) : null;
        var price = racket.PriceMinor is { } minor ? Language.Money(minor, Shop) : null;
        var what = kind == AnswerKind.Same ? string.Join(" · ", new[] { tensions, price }.OfType<string>()) : "";
        return AnswerName(kind) + (what.Length == 0 ? "" : Language.Colon + what);
    }

    public string AnswerName(AnswerKind kind)
    {
        var say = Language.Phrases.Reminder;
        return kind switch
        {
            AnswerKind.Same => say.Same,
            AnswerKind.Different => say.Different,
            AnswerKind.NotYet => say.NotYet,
            AnswerKind.Elsewhere => say.Elsewhere,
            _ => say.Gone,
        };
    }

    /// <summary>The answer on file as a sentence.</summary>
    public string? Saved(Item item)
    {
        var say = Language.Phrases.Reminder;
        return item.Racket.Answer switch
        {
            AnswerKind.Same => say.SavedSame.Fill(("racket", item.Name)),
            AnswerKind.Different => say.SavedDifferent.Fill(("racket", item.Name)),
            AnswerKind.NotYet when item.Racket.NotBefore is { } day => say.SavedNotYet.Fill(("racket", item.Name), ("day", Language.DayInText(day))),
            AnswerKind.Elsewhere => say.SavedElsewhere.Fill(("racket", item.Name), ("day", Language.DayInText(item.Racket.AnsweredElsewhereOn!.Value))),
            AnswerKind.Gone => say.SavedGone.Fill(("racket", item.Name)),
            _ => null,
        };
    }

    /// <summary>Why an answer can no longer be given or changed; null while it can.</summary>
    public string? Shut(ReminderRacket racket)
    {
        var say = Language.Phrases.Reminder;
        return racket.IsOpen ? null
            : racket.IsStrungSince && racket.StrungHereOn is { } day ? say.Done.Fill(("day", Language.DayInText(day)))
            : racket.IsOnMachine ? say.OnMachine
            : say.AtShop;
    }
}
