using TagPage.Core.Tags;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Words;

namespace TagPage.Web.Http.Limits;

/// <summary>Finds what a code in an address opens, counts the wrong ones, and turns away whoever has tried too many.</summary>
public sealed class TagLookup(Database records, TagPageStore tags, CareStore care, ShopStore shops, ShopClock clock, CodeGuard guard)
{
    /// <param name="typed">The code as the address has it, in any case and spelling.</param>
    /// <param name="visitor">Who asks.</param>
    public TagVisit Open(string typed, HttpContext visitor)
    {
        var asked = guard.Ask(visitor, typed);
        if (asked.Reading.Code is not { } code)
            return new TagVisit(TagVisit.Unread(asked.Reading.Outcome));
        if (asked.Wait > TimeSpan.Zero)
            return new TagVisit(TagAnswer.Refused) { Wait = asked.Wait };
        var (state, view) = records.ReadTogether(() => (tags.StateOf(code), View(code)));
        if (view is { } live)
        {
            guard.Right(visitor, code);
            visitor.Items[typeof(PlayerOfTag)] = new PlayerOfTag(live.Racket.PlayerId);
            return new TagVisit(TagAnswer.Live, code, live.Racket.RacketId, live.View);
        }
        if (state is TagState.Retired)
            return new TagVisit(TagAnswer.Retired, code);
        // A tag that is not in use yet tells a guesser as little as an unknown one, so it counts as wrong too.
        guard.Wrong(visitor);
        return new TagVisit(state is TagState.Unassigned ? TagAnswer.Unassigned : TagAnswer.Unknown, code);
    }

    private (TagRow Racket, TagView View)? View(TagCode code)
    {
        if (tags.Racket(code) is not { } racket)
            return null;
        var stringings = tags.Stringings(code, 1 + TagView.MostEarlier);
        return (racket, TagView.Of(code, racket, stringings, clock.Today, shops.Get().StartingValues) with { Guides = care.For(racket.RacketId), Spec = tags.Spec(code), Visits = tags.Visits(code, TagView.MostVisits) });
    }
}

/// <summary>Left with a request whose page shows a racket of this player's.</summary>
public sealed record PlayerOfTag(long Id);
