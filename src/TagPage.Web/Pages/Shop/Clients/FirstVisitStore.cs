using Microsoft.Data.Sqlite;
using TagPage.Core.Tags;
using TagPage.Web.Data;
using TagPage.Web.Pages.Shop.Players;
using TagPage.Web.Pages.Shop.Rackets;
using TagPage.Web.Pages.Shop.Tags;

namespace TagPage.Web.Pages.Shop.Clients;

/// <summary>A new client with a player, a racket and its tag: all of them, or none.</summary>
public sealed class FirstVisitStore(Database database, ClientStore clients, TimeProvider clock)
{
    /// <summary>Done carries the racket's id.</summary>
    public Outcome Add(FirstVisitInput input) => database.Write(c => SubmittedForms.Once(c, input.FormKey, clock.GetUtcNow(), () =>
    {
        if (WhyNot(c, input) is { } why)
            return new Outcome.Refused(nameof(input.BlankCode), why);
        var client = clients.Insert(c, input.ToClient());
        var player = PlayerStore.Insert(c, client, input.ToPlayer());
        var racket = RacketStore.Insert(c, player, input.ToRacket());
        Tag(c, input, racket);
        return new Outcome.Done(racket);
    }));

    private static string? WhyNot(SqliteConnection connection, FirstVisitInput input)
    {
        if (input.Tag != FirstTag.Blank)
            return null;
        var reading = TagCode.Read(input.BlankCode);
        return reading.Outcome switch
        {
            TagCodeOutcome.WrongCheckCharacter => "Look again at the tag: one character is different there.",
            TagCodeOutcome.NotACode => "A code has eleven letters and digits, like 7K2M-9Q4T-XAV.",
            _ => TagStore.WhyNotBlank(connection, reading.Code!.Value),
        };
    }

    private void Tag(SqliteConnection connection, FirstVisitInput input, long racket)
    {
        if (input.Tag == FirstTag.New)
            TagStore.Insert(connection, racket, clock.GetUtcNow());
        else if (input.Tag == FirstTag.Blank)
            TagStore.LinkNew(connection, TagCode.Read(input.BlankCode).Code!.Value, racket, clock.GetUtcNow());
    }
}
