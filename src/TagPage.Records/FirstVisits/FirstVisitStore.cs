using Microsoft.Data.Sqlite;
using TagPage.Core.Tags;
using TagPage.Records.Clients;
using TagPage.Records.Players;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Records.Tags;

namespace TagPage.Records.FirstVisits;

/// <summary>A new client with a player, a racket and its tag: all of them, or none.</summary>
public sealed class FirstVisitStore(Database database, ClientStore clients, TimeProvider clock)
{
    /// <summary>Done carries the racket's id.</summary>
    public Outcome Add(Who who, FirstVisitEntry input) => database.WriteOnceAsShop(who, input.FormKey, clock.GetUtcNow(), c =>
    {
        if (WhyNot(c, input) is { } why)
            return new Outcome.Refused(why);
        var client = clients.Insert(c, input.Client);
        var player = PlayerStore.Insert(c, client, input.Player);
        var racket = RacketStore.Insert(c, player, input.Racket);
        Tag(c, input, racket);
        return new Outcome.Done(racket);
    });

    private static NotBlank? WhyNot(SqliteConnection connection, FirstVisitEntry input)
    {
        if (input.Tag != FirstTag.Blank)
            return null;
        var reading = TagCode.Read(input.BlankCode);
        return reading.Code is { } code
            ? TagStore.WhyNotBlank(connection, code, nameof(input.BlankCode))
            : new CodeUnread(reading.Outcome, nameof(input.BlankCode));
    }

    private void Tag(SqliteConnection connection, FirstVisitEntry input, long racket)
    {
        if (input.Tag == FirstTag.New)
            TagStore.Insert(connection, racket, clock.GetUtcNow());
        else if (input.Tag == FirstTag.Blank)
            TagStore.LinkNew(connection, TagCode.Read(input.BlankCode).Code!.Value, racket, clock.GetUtcNow());
    }
}
