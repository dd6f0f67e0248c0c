using Dapper;
using TagPage.Core.Rackets;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>A household marks a racket as lost, with a note for everybody, and as back.</summary>
public sealed class OwnPageLostStore(Database database)
{
    /// <summary>What became of it: done, absent, or what is wrong with the note.</summary>
    public (bool IsThere, LostNoteFault? Fault) Lose(long client, long racket, DateOnly since, string note) => database.Write(c =>
    {
        if (OwnPageRacketStore.Get(c, client, racket) is not { IsMine: true })
            return (false, (LostNoteFault?)null);
        if (LostStore.Fault(c, client, note) is { } fault)
            return (true, fault);
        LostStore.Mark(c, racket, since, note);
        return (true, null);
    });

    /// <summary>Back already is as good.</summary>
    public Outcome Back(long client, long racket) => database.Write<Outcome>(c =>
        c.Execute(BackSql, new { client, racket }) == 1 ? new Outcome.Done(racket) : new Outcome.Absent());

    private const string BackSql = """
        UPDATE racket SET version = version + (lost_since IS NOT NULL), lost_since = NULL, lost_note = ''
        WHERE id = @racket AND state <> 'Sold' AND player_id IN (SELECT id FROM player WHERE client_id = @client)
        """;
}
