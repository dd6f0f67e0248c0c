using TagPage.Core.Tags;
using TagPage.Records.Clients;
using TagPage.Records.Demo;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using static TagPage.Web.Start.Demo.DemoWrites;

namespace TagPage.Web.Start.Demo;

/// <summary>The demo's lost racket, through the same stores that real finders use.</summary>
public sealed class DemoFinder(DemoStore demo, FoundChoiceStore choices, LostStore lost, FoundEventStore events, ShopClock clock)
{
    public void Tell()
    {
        if (demo.Lost is not { } racket)
            return;
        Agree(racket.ClientId);
        Done(lost.Lose(Who.Shop, racket.RacketId, new LostEntry { Since = racket.Since, Note = "Left on the bench at court 3. Thank you for bringing it back!" }));
        var (first, second) = (FormKey.New(), FormKey.New());
        Press(racket.Code, FoundKind.Shown, first, TimeSpan.FromHours(53));
        Press(racket.Code, FoundKind.StillThere, first, TimeSpan.FromHours(52.9));
        Press(racket.Code, FoundKind.Message, second, TimeSpan.FromHours(28),
            "I took it along before it rained. It is at the desk of the sports hall now, in the box behind the counter. Open until nine.");
    }

    private void Agree(long client) =>
        Done(choices.Change(Who.Shop, client, new FoundChoiceEntry { Version = choices.Get(Who.Shop, client)!.Version, Choice = FoundChoice.Contact }));

    private void Press(TagCode code, FoundKind kind, string finder, TimeSpan ago, string message = "")
    {
        var press = new FinderPress(code, kind, Source: finder, FormKey.New(), clock.Now - ago) { Message = message };
        if (!events.Take(press).Result.IsTaken())
            throw new InvalidOperationException("The demo's finder was turned away.");
    }
}
