using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Deeds;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>
/// Takes in a household's or a payer's rackets in one go: a new job each, or the ticket that waits for the racket. All of
/// them, or none. Only the shop may.
/// </summary>
public sealed class DropOffStore(Database database, ShopStore shops, ShopClock clock)
{
    /// <summary>Rackets that are played with, by player and number.</summary>
    public IReadOnlyList<NewJobStore.RacketRow> Rackets(Who who, Party party) => database.Read(c => Rackets(c, who, party));

    private static List<NewJobStore.RacketRow> Rackets(SqliteConnection connection, Who who, Party party) =>
        connection.Query<NewJobStore.RacketRow>(RacketsSql, new { who.IsShop, party.ClientId, party.PayerId }).AsList();

    private const string RacketsSql = $"""
        {NewJobStore.Select}
        WHERE (c.id = @ClientId OR c.payer_id = @PayerId) AND r.state IN ('InTurn', 'Spare') AND @IsShop
        ORDER BY c.name_key, c.id, p.name_key, p.id, r.number
        """;

    /// <summary>Whether this form was saved already.</summary>
    public bool IsSent(string formKey) => database.Read(c => FormKeys.IsUsed(c, formKey));

    /// <summary>Done carries the first ticket's job.</summary>
    public Outcome Add(Who who, Party party, DropOffEntry input)
    {
        var (at, shop) = ((clock.Now, clock.Today), shops.Get());
        return database.WriteOnceAsShop(who, input.FormKey, at.Now, c =>
        {
            var rackets = Rackets(c, who, party).ToDictionary(racket => racket.Id);
            if (input.Lines.Any(line => !rackets.ContainsKey(line.RacketId)))
                return new Outcome.Absent();
            List<(NewJobStore.RacketRow Racket, DropOffLine Line)> lines = [.. input.Lines.DistinctBy(line => line.RacketId).Select(line => (rackets[line.RacketId], On(line, input)))];
            return WhyNot(c, input, lines, at.Today, shop) is { } why
                ? new Outcome.Refused(why)
                : new Outcome.Done(lines.Select(line => Take(c, who, line.Racket, line.Line, input, at, shop)).ToList()[0]);
        });
    }

    /// <summary>A string that is new to the catalogue comes in with a single job.</summary>
    private static DropOffLine On(DropOffLine line, DropOffEntry input) =>
        line with { Job = line.Job is { } job ? job with { NewString = new(), ReceivedOn = input.ReceivedOn, PromisedFor = input.PromisedFor } : null };

    private static Refusal? WhyNot(SqliteConnection connection, DropOffEntry input, List<(NewJobStore.RacketRow Racket, DropOffLine Line)> lines, DateOnly today, ShopDetails shop) =>
        lines.Count == 0
            ? new NoRacketChosen()
            : new JobDays { ReceivedOn = input.ReceivedOn, PromisedFor = input.PromisedFor }.Faults(today).FirstOrDefault()
              ?? lines.SelectMany(line => Faults(connection, line.Racket, line.Line, today, shop)).FirstOrDefault();

    private static IEnumerable<Refusal> Faults(SqliteConnection connection, NewJobStore.RacketRow racket, DropOffLine line, DateOnly today, ShopDetails shop)
    {
        if (line.Job is null && !racket.OpenIsExpected)
            yield return new NotAnnounced(line.Place);
        if (line.Job is { } job && NewJobStore.WhyNot(connection, racket, job, today, shop) is { } why)
            yield return why with { Field = $"{line.Place}.{why.Field}" };
    }

    private static long Take(SqliteConnection connection, Who who, NewJobStore.RacketRow racket, DropOffLine line, DropOffEntry input, (DateTimeOffset Now, DateOnly Today) at, ShopDetails shop)
    {
        if (line.Job is { } job)
            return NewJobStore.Add(connection, who, racket, job, at, shop) is Outcome.Done { Id: var made }
                ? made
                : throw new InvalidOperationException("What was found possible a moment ago was refused.");
        MoveStore.Receive(connection, racket.OpenJobId!.Value, input.ReceivedOn, at.Now);
        JobDeedStore.Note(connection, who, racket.OpenJobId.Value, JobDeed.Came, at.Now);
        connection.Execute(PromiseSql, new { Id = racket.OpenJobId.Value, input.PromisedFor });
        return racket.OpenJobId.Value;
    }

    private const string PromiseSql = "UPDATE job SET promised_for = @PromisedFor WHERE id = @Id AND promised_for IS NULL";
}
