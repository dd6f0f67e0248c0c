using TagPage.Core.Forecast;
using TagPage.Core.Jobs;
using TagPage.Core.Rackets;
using TagPage.Core.Text;
using TagPage.Records.Clients;
using TagPage.Records.Jobs;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;

namespace TagPage.Web.Words.OwnPage;

/// <summary>The own page's names for states, and its sentences about a racket.</summary>
public sealed class OwnPageNames(PageLanguage spoken)
{
    private readonly Language _language = spoken.Language;
    private readonly OwnPageRacketPhrases _say = OwnPageWords.Of(spoken.Language).Racket;

    public string Of(RacketState state) => state switch
    {
        RacketState.InTurn => _say.InTurn,
        RacketState.Spare => _say.Spare,
        RacketState.Resting => _say.Resting,
        RacketState.Damaged => _say.Damaged,
        RacketState.Sold => _say.Sold,
        _ => _say.Gone,
    };

    public string Of(FeelBed bed) => bed switch
    {
        FeelBed.TooStiff => _say.TooStiff,
        FeelBed.TooLoose => _say.TooLoose,
        _ => _say.Right,
    };

    public string Of(FoundChoice choice) => choice switch
    {
        FoundChoice.Message => OwnPageWords.Of(_language).Lost.GetsMessage,
        FoundChoice.Contact => OwnPageWords.Of(_language).Lost.GetsContact,
        _ => OwnPageWords.Of(_language).Lost.GetsShop,
    };

    public string Of(FoundKind kind)
    {
        var say = _language.Phrases.Log;
        return kind switch
        {
            FoundKind.Shown => say.Shown,
            FoundKind.AtDesk => say.AtDesk,
            FoundKind.HaveIt => say.HaveIt,
            FoundKind.StillThere => say.StillThere,
            _ => say.Message,
        };
    }

    /// <summary>"Racket 2", with the frame where it is known.</summary>
    public string Racket(OwnPageRacket racket)
    {
        var name = _language.Phrases.Trade.Racket.Fill(("number", $"{racket.Number}"));
        return racket.Frame.Length > 0 ? $"{name}, {racket.Frame}" : name;
    }

    public string? Job(OwnPageRacket racket) => racket is { JobState: JobState.Waiting, Expected: true, LeftAt: { } stop }
        ? _say.JobExpectedAt.Fill(("stop", stop))
        : Job(racket.JobState, racket.Expected);

    public string? Job(JobState? state, bool expected) => state switch
    {
        JobState.Waiting when expected => _say.JobExpected,
        JobState.Waiting => _say.JobWaiting,
        JobState.OnMachine => _say.JobOnMachine,
        JobState.Strung => _say.JobReady,
        _ => null,
    };

    /// <summary>"Restring in 3 weeks, 14 Dec 2026", or why there is no date.</summary>
    public string By(RestringBy by)
    {
        var say = _language.Phrases.Tag;
        return by switch
        {
            { Due: { } due, DaysLeft: { } left and >= 0 } =>
                $"{_language.Sentence(say.Headline.Fill(("when", _language.When(left))))}, {_language.Day(due)}",
            { Due: { } due, DaysLeft: { } left } => _language.Sentence(say.WasDue.Fill(("when", _language.When(left)), ("day", _language.DayInText(due)))),
            _ => new TagWords(_language).State(by.State),
        };
    }

    public string Money(long minor, ShopDetails shop) => _language.Money(minor, shop);
}
