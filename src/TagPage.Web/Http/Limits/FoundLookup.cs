using TagPage.Core.Tags;
using TagPage.Records.LostAndFound;

namespace TagPage.Web.Http.Limits;

/// <summary>Reads the code of a found page's address and counts the wrong ones. A code that reads as one gets an answer, whatever is behind it.</summary>
public sealed class FoundLookup(FoundStore store, CodeGuard guard)
{
    public FoundVisit Open(string typed, HttpContext visitor)
    {
        var asked = guard.Ask(visitor, typed);
        if (asked.Reading.Code is not { } code)
            return new FoundVisit(null, null);
        if (asked.Wait > TimeSpan.Zero)
            return new FoundVisit(null, null) { Wait = asked.Wait };
        if (store.IsWrong(code))
            guard.Wrong(visitor);
        else
            guard.Right(visitor, code);
        return new FoundVisit(code, store.Open(code));
    }
}

/// <param name="Code">Null where the address holds none, or the source is refused.</param>
/// <param name="Open">What is offered; null for the shop's contact and nothing else.</param>
public sealed record FoundVisit(TagCode? Code, FoundStore.Row? Open)
{
    public TimeSpan Wait { get; init; }
}
