using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Records.Clients;
using TagPage.Records.Jobs;
using TagPage.Records.Players;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>Takes rackets in at an event's desk, as ordinary jobs of rackets on file.</summary>
public sealed class IntakeStore(Database database, ClientStore clients, ShopStore shops, ShopClock clock)
{
    /// <summary>Takes it in with the next desk number, which the result's id is.</summary>
    public Outcome Add(Who who, long eventId, IntakeEntry input) => database.AtDesk(who, eventId, (c, desk) =>
        FormKeys.Once(c, who, input.FormKey, clock.Now, () => Add(c, who, desk, input)));

    private Outcome Add(SqliteConnection connection, Who who, EventRow desk, IntakeEntry input)
    {
        var racket = input.RacketId is { } known ? KnownRacket(connection, who, desk.Id, known, input.Code) : null;
        if (input.RacketId is not null && racket is null)
            return new Outcome.Absent();
        if (input.PlayerId is { } player && KnownPlayer(connection, who, desk.Id, player) is null)
            return new Outcome.Absent();
        if (racket is null && input.PlayerId is null && string.IsNullOrWhiteSpace(input.Visitor.Name))
            return new Outcome.Refused(new NobodyNamed());
        if (racket?.OpenJobId is { } open)
            return new Outcome.Refused(connection.ExecuteScalar<int?>(NumberSql, new { open, desk.Id }) is { } there ? new AtDeskAlready(there) : new OpenInShop(racket.OpenTicket!.Value));
        if ((IntakeRules.WhyNot(connection, desk, input) ?? input.Unkeepable(clock.Minute)) is { } why)
            return new Outcome.Refused(why);
        var sport = racket?.Sport ?? input.Visitor.Sport;
        if (Job(input, null).Faults(sport, shops.Get(), clock.Today, null).FirstOrDefault() is { } fault)
            return new Outcome.Refused(fault);
        var number = desk.LastNumber + 1;
        if (IntakeRules.Promise(DeskStore.Of(connection, desk, clock.Minute).Desk, IntakeRules.Planned(input, number, sport), input.Insist) is not { } promise)
            return new Outcome.Refused(new NoHoursLeft());
        if (StringPickStore.Pick(connection, Job(input, null)).Refused is { } refused)
            return refused;
        // All that can be refused was asked before a visitor is written down.
        racket ??= NewJobStore.Racket(connection, Who.Shop, NewRacket(connection, desk, input))!;
        Keep(connection, who, desk, input, racket.Id, number, promise);
        return new Outcome.Done(number);
    }

    private void Keep(SqliteConnection connection, Who who, EventRow desk, IntakeEntry input, long racket, int number, DateTime promise)
    {
        var order = Job(input, promise) with { Price = input.Order.Price ?? IntakeRules.Price(desk, input, shops.Get()) };
        if (NewJobStore.Add(connection, who, NewJobStore.Racket(connection, Who.Shop, racket)!, order, (clock.Now, clock.Today), shops.Get()) is not Outcome.Done { Id: var job })
            throw new InvalidOperationException("What was found possible a moment ago was refused.");
        DeskChange.Make(connection, who, desk, clock.Minute, () =>
        {
            connection.Execute("UPDATE event SET last_number = @number WHERE id = @Id", new { number, desk.Id });
            connection.Execute(AddSql, Values(desk, input, job, number, promise));
            return job;
        });
    }

    /// <summary>What could be promised for a racket, and whom it would make late; null for everybody who does not work there.</summary>
    public WhatIf? Ask(Who who, long eventId, IntakeEntry input, Sport sport) => database.Read(c =>
        EventStore.Get(c, who, eventId) is { } desk
            ? WhatIf.Of(DeskStore.Of(c, desk, clock.Minute).Desk, IntakeRules.Planned(input, desk.LastNumber + 1, sport))
            : null);

    /// <summary>The desk number that a form sent before was given; null for one that was not.</summary>
    public int? Sent(Who who, long eventId, string formKey) => database.Read(c =>
        EventStore.Get(c, who, eventId) is null ? null : (int?)FormKeys.Made(c, who, formKey));

    /// <summary>A racket that may be taken in: any for the shop; for a helper one whose tag they hold, or of a player who is at the event.</summary>
    public NewJobStore.RacketRow? Racket(Who who, long eventId, long racket, string? code) => database.Read(c =>
        EventStore.Get(c, who, eventId) is null ? null : KnownRacket(c, who, eventId, racket, code));

    private static NewJobStore.RacketRow? KnownRacket(SqliteConnection connection, Who who, long eventId, long racket, string? code) =>
        connection.ExecuteScalar<bool>(MaySql, new { who.IsShop, eventId, racket, Code = Core.Tags.TagCode.Read(code).Code?.ToString() })
            ? NewJobStore.Racket(connection, Who.Shop, racket)
            : null;

    private const string MaySql = """
        SELECT EXISTS (SELECT 1 FROM racket r
                       WHERE r.id = @racket AND r.state NOT IN ('Sold', 'Gone')
                         AND (@IsShop
                              OR EXISTS (SELECT 1 FROM tag t WHERE t.racket_id = r.id AND t.state = 'Live' AND t.code = @Code)
                              OR EXISTS (SELECT 1 FROM event_entry e JOIN job j ON j.id = e.job_id JOIN racket o ON o.id = j.racket_id
                                         WHERE e.event_id = @eventId AND o.player_id = r.player_id)))
        """;

    /// <summary>A player whose racket is not on file yet.</summary>
    public sealed record PlayerRow
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public bool Junior { get; init; }
        public string LabelName { get; init; } = "";

        /// <summary>The last number that a racket of theirs was given here.</summary>
        public int? LastNumber { get; init; }
        public int NextNumber { get; init; }
        public Sport? LastSport { get; init; }
    }

    /// <summary>One whose racket may be taken in: any for the shop, for a helper one who is at the event.</summary>
    public PlayerRow? Player(Who who, long eventId, long player) => database.Read(c =>
        EventStore.Get(c, who, eventId) is null ? null : KnownPlayer(c, who, eventId, player));

    private static PlayerRow? KnownPlayer(SqliteConnection connection, Who who, long eventId, long player) =>
        connection.QuerySingleOrDefault<PlayerRow>(PlayerSql, new { who.IsShop, eventId, player });

    private const string PlayerSql = """
        SELECT p.id, p.name, p.junior, p.label_name,
               (SELECT MAX(e.number) FROM event_entry e JOIN job j ON j.id = e.job_id JOIN racket o ON o.id = j.racket_id
                WHERE e.event_id = @eventId AND o.player_id = p.id) AS last_number, (SELECT COALESCE(MAX(r.number), 0) + 1 FROM racket r WHERE r.player_id = p.id) AS next_number,
               (SELECT r.sport FROM racket r WHERE r.player_id = p.id ORDER BY r.id DESC LIMIT 1) AS last_sport
        FROM player p
        WHERE p.id = @player
          AND (@IsShop OR EXISTS (SELECT 1 FROM event_entry e JOIN job j ON j.id = e.job_id JOIN racket o ON o.id = j.racket_id
                                  WHERE e.event_id = @eventId AND o.player_id = p.id))
        """;

    private const string NumberSql = "SELECT number FROM event_entry WHERE job_id = @open AND event_id = @Id";

    private NewJobEntry Job(IntakeEntry input, DateTime? promise) => new()
    {
        FormKey = input.FormKey,
        IsPricedWhole = true,
        MainsId = input.Order.MainsId,
        CrossesId = input.Order.CrossesId,
        NewString = input.Order.NewString,
        MainsSuppliedBy = input.Order.MainsSuppliedBy,
        CrossesSuppliedBy = input.Order.CrossesSuppliedBy,
        MainsTension = input.Order.MainsTension,
        CrossesTension = input.Order.CrossesTension,
        TensionUnit = input.Order.TensionUnit,
        MainsPreStretch = input.Order.MainsPreStretch,
        CrossesPreStretch = input.Order.CrossesPreStretch,
        Pieces = input.Order.Pieces,
        Price = input.Order.Price,
        Note = input.Order.Note,
        ReceivedOn = clock.Today,
        PromisedFor = promise is { } at && DateOnly.FromDateTime(at) >= clock.Today ? DateOnly.FromDateTime(at) : null,
    };

    private long NewRacket(SqliteConnection connection, EventRow desk, IntakeEntry input)
    {
        var player = input.PlayerId ?? Visitor(connection, desk, input);
        var number = KnownPlayer(connection, Who.Shop, desk.Id, player)!.NextNumber;
        return RacketStore.Insert(connection, player, new RacketEntry
        {
            Number = number,
            State = RacketState.InTurn,
            Sport = input.Visitor.Sport,
            Frame = input.Visitor.Frame,
            TapeColour = input.Visitor.TapeColour,
        });
    }

    // They asked for no reminders when they came by; the shop asks once they become a client.
    private long Visitor(SqliteConnection connection, EventRow desk, IntakeEntry input)
    {
        var name = input.Visitor.Name!.Trim();
        var client = clients.Insert(connection, new ClientEntry { Name = name, Language = shops.Get().Language, Reminders = false, Note = $"{desk.Name}: {input.Team}".TrimEnd(' ', ':') });
        return PlayerStore.Insert(connection, client, new PlayerEntry { Name = name, Junior = input.Visitor.Junior });
    }

    private object Values(EventRow desk, IntakeEntry input, long job, int number, DateTime promise) => new
    {
        job,
        desk.Id,
        number,
        Team = input.Team ?? "",
        Now = clock.Minute,
        input.NeededBy,
        input.NotBefore,
        promise,
        input.OnCourt,
        input.KeptFor,
        input.Minutes,
        Stencil = input.Stencil ?? "",
        StencilColour = input.StencilColour ?? "",
    };

    private const string AddSql = """
        INSERT INTO event_entry (job_id, event_id, number, team, came_at, needed_by, not_before, promised, on_court, kept_for, minutes, stencil, stencil_colour)
        VALUES (@job, @Id, @number, @Team, @Now, @NeededBy, @NotBefore, @promise, @OnCourt, @KeptFor, @Minutes, @Stencil, @StencilColour)
        """;
}
