using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Records.Storage;
using TagPage.Records.Tags;

namespace TagPage.Records.Rackets;

/// <summary>The frames, numbered within their player.</summary>
public sealed class RacketStore(Database database, TimeProvider clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public long PlayerId { get; init; }
        public string PlayerName { get; init; } = "";
        public long ClientId { get; init; }
        public string ClientName { get; init; } = "";
        public int Number { get; init; }
        public RacketState State { get; init; }
        public Sport Sport { get; init; }
        public string Frame { get; init; } = "";
        public string TapeColour { get; init; } = "";
        public decimal? HeadSize { get; init; }
        public string HeadSizeUnit { get; init; } = "in2";
        public int? PatternMains { get; init; }
        public int? PatternCrosses { get; init; }
        public decimal? LengthCm { get; init; }
        public string Grip { get; init; } = "";
        public DateOnly? OwnDate { get; init; }
        public string OwnDateNote { get; init; } = "";
        public string Note { get; init; } = "";
        public int Version { get; init; }
        public bool IsTagged { get; init; }
        public bool IsHandedOver { get; init; }
    }

    /// <summary>The player a racket is added to.</summary>
    public sealed record Owner
    {
        public string Name { get; init; } = "";
        public long ClientId { get; init; }
        public string ClientName { get; init; } = "";
        public int NextNumber { get; init; }
        public Sport? LastSport { get; init; }
    }

    public Owner? Player(long player) => database.Read(c => c.QuerySingleOrDefault<Owner>(PlayerSql, new { player }));

    private const string PlayerSql = """
        SELECT p.name, p.client_id, c.name AS client_name,
               (SELECT COALESCE(MAX(r.number), 0) + 1 FROM racket r WHERE r.player_id = p.id) AS next_number,
               COALESCE((SELECT r.sport FROM racket r WHERE r.player_id = p.id ORDER BY r.id DESC LIMIT 1),
                        (SELECT r.sport FROM racket r ORDER BY r.id DESC LIMIT 1)) AS last_sport
        FROM player p
        JOIN client c ON c.id = p.client_id
        WHERE p.id = @player
        """;

    /// <summary>The sport of the racket added last; most shops have a usual one.</summary>
    public Sport? LastSport() => database.Read(c => c.QuerySingleOrDefault<string?>(LastSportSql)) is { } name ? Enum.Parse<Sport>(name) : null;

    private const string LastSportSql = "SELECT sport FROM racket ORDER BY id DESC LIMIT 1";

    public Row? Get(long id) => database.Read(c => Get(c, id));

    internal static Row? Get(SqliteConnection connection, long id) => connection.QuerySingleOrDefault<Row>(GetSql, new { id });

    private const string GetSql = """
        SELECT r.id, r.player_id, p.name AS player_name, p.client_id, c.name AS client_name, r.number, r.state, r.sport,
               r.frame, r.tape_colour, r.head_size, r.head_size_unit, r.pattern_mains, r.pattern_crosses, r.length_cm,
               r.grip, r.own_date, r.own_date_note, r.note, r.version,
               EXISTS (SELECT 1 FROM tag t WHERE t.racket_id = r.id AND t.state = 'Live') AS is_tagged,
               EXISTS (SELECT 1 FROM racket n WHERE n.came_from_id = r.id) AS is_handed_over
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE r.id = @id
        """;

    /// <summary>Done carries the racket; of several of the same the first, which the others follow by number.</summary>
    public Outcome Add(Who who, long player, RacketEntry input) => database.WriteOnceAsShop(who, input.FormKey, clock.GetUtcNow(), c =>
    {
        if (c.QuerySingleOrDefault<Owner>(PlayerSql, new { player }) is null)
            return new Outcome.Absent();
        List<RacketEntry> all = [.. Enumerable.Range(input.Number, input.Same).Select(number => input with { Number = number })];
        if (all[^1].Number > RacketEntry.LastNumber)
            return new Outcome.Refused(new NumbersEnd(all[^1].Number));
        return all.Select(one => Taken(c, player, 0, one.Number)).FirstOrDefault(taken => taken is not null)
            ?? (Outcome)new Outcome.Done(all.Select(one => Insert(c, player, one)).ToList()[0]);
    });

    /// <summary>Rackets of the same player from that one on, by number: so many.</summary>
    public IReadOnlyList<long> From(long id, int count) => database.Read(c => c.Query<long>(FromSql, new { id, count }).AsList());

    private const string FromSql = """
        SELECT r.id
        FROM racket f
        JOIN racket r ON r.player_id = f.player_id AND r.number >= f.number
        WHERE f.id = @id
        ORDER BY r.number
        LIMIT @count
        """;

    /// <summary>For a write that creates more than the racket; within its transaction.</summary>
    internal static long Insert(SqliteConnection connection, long player, RacketEntry input) =>
        connection.ExecuteScalar<long>(AddSql, Values(player, input));

    private const string AddSql = """
        INSERT INTO racket (player_id, number, state, sport, frame, tape_colour, head_size, head_size_unit,
                            pattern_mains, pattern_crosses, length_cm, grip, own_date, own_date_note, note)
        VALUES (@Id, @Number, @State, @Sport, @Frame, @TapeColour, @HeadSize, @HeadSizeUnit,
                @PatternMains, @PatternCrosses, @LengthCm, @Grip, @OwnDate, @OwnDateNote, @Note)
        RETURNING id
        """;

    /// <summary>A sold racket loses its tag: whoever has it now must not read its history.</summary>
    public Outcome Change(Who who, long id, RacketEntry input) => database.WriteAsShop(who, c =>
    {
        if (Get(c, id) is not { } row)
            return new Outcome.Absent();
        if (row.IsHandedOver && input.State != RacketState.Sold)
            return new Outcome.Refused(new HandedOver());
        if (Taken(c, row.PlayerId, id, input.Number) is { } taken)
            return taken;
        if (c.Execute(ChangeSql, Values(id, input)) == 0)
            return Outcome.Stale;
        if (input.State == RacketState.Sold)
            TagStore.RetireOf(c, id, clock.GetUtcNow());
        return new Outcome.Done(id);
    });

    private const string ChangeSql = """
        UPDATE racket
        SET number = @Number, state = @State, sport = @Sport, frame = @Frame, tape_colour = @TapeColour,
            head_size = @HeadSize, head_size_unit = @HeadSizeUnit, pattern_mains = @PatternMains,
            pattern_crosses = @PatternCrosses, length_cm = @LengthCm, grip = @Grip, own_date = @OwnDate,
            own_date_note = @OwnDateNote, note = @Note, version = version + 1
        WHERE id = @Id AND version = @Version
        """;

    /// <summary>Whether another racket of the player has the number; within the caller's transaction.</summary>
    internal static Outcome.Refused? Taken(SqliteConnection connection, long player, long racket, int number) =>
        connection.QuerySingleOrDefault<string?>(TakenSql, new { player, racket, number }) is { } name
            ? new Outcome.Refused(new NumberTaken(name, number))
            : null;

    private const string TakenSql = """
        SELECT p.name
        FROM racket r
        JOIN player p ON p.id = r.player_id
        WHERE r.player_id = @player AND r.number = @number AND r.id <> @racket
        """;

    private static object Values(long id, RacketEntry input) => new
    {
        Id = id,
        input.Version,
        input.Number,
        State = input.State.ToString(),
        Sport = input.Sport.ToString(),
        Frame = input.Frame ?? "",
        TapeColour = input.TapeColour ?? "",
        input.HeadSize,
        HeadSizeUnit = input.HeadSizeUnit ?? "in2",
        input.PatternMains,
        input.PatternCrosses,
        input.LengthCm,
        Grip = input.Grip ?? "",
        input.OwnDate,
        OwnDateNote = input.OwnDateNote ?? "",
        Note = input.Note ?? "",
    };
}
