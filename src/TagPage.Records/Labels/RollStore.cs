using System.Security.Cryptography;
using System.Text.Json;
using Dapper;
using TagPage.Core.Tags;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.Labels;

/// <summary>Rolls of blank tags, made ahead. A roll is a row that background work fills, so it survives a restart.</summary>
public sealed class RollStore(Database database, LinkTokens keys, TimeProvider clock)
{
    /// <summary>Tags on one roll at most.</summary>
    public const int Most = 500;

    public sealed record Row
    {
        public long Id { get; init; }
        public string Secret { get; init; } = "";
        public int Count { get; init; }
        public int Made { get; init; }
        public string Stock { get; init; } = "";
        public DateTimeOffset MadeAt { get; init; }
        public int Linked { get; init; }
        public int Retired { get; init; }

        public bool IsReady => Made == Count;

        /// <summary>How labels were printed when the roll was ordered; it stays so.</summary>
        public LabelSettings Settings => JsonSerializer.Deserialize<LabelSettings>(Stock)!;
    }

    public IReadOnlyList<Row> List() => database.Read(c => c.Query<Row>($"{RowSql} ORDER BY r.id DESC LIMIT 50").ToList());

    /// <summary>Where the roll is shown, for good: no other roll is ever shown there.</summary>
    public string Path(Row roll) => "/shop/labels/rolls/" + keys.Token(LinkPurpose.Roll, roll.Id, roll.Secret);

    /// <summary>The roll of a path's last part; null for one that was never given out or is gone.</summary>
    public Row? Of(string token) =>
        LinkTokens.Claimed(token) is { } id && Get(id) is { } roll && keys.Fits(token, LinkPurpose.Roll, roll.Id, roll.Secret) ? roll : null;

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>($"{RowSql} WHERE r.id = @id", new { id }));

    private const string RowSql = """
        SELECT r.id, r.secret, r.count, r.made, r.stock, r.made_at,
               (SELECT COUNT(*) FROM tag t WHERE t.roll_id = r.id AND t.state = 'Live') AS linked,
               (SELECT COUNT(*) FROM tag t WHERE t.roll_id = r.id AND t.state = 'Retired') AS retired
        FROM tag_roll r
        """;

    public Outcome Order(Who who, int count, LabelSettings settings, string formKey) => database.WriteOnceAsShop(who, formKey, clock.GetUtcNow(), c =>
        new Outcome.Done(c.ExecuteScalar<long>(OrderSql, new { count, Stock = JsonSerializer.Serialize(settings), Now = clock.GetUtcNow() })));

    private const string OrderSql = "INSERT INTO tag_roll (count, stock, made_at) VALUES (@count, @Stock, @Now) RETURNING id";

    /// <summary>Makes some more tags of the oldest unfinished roll; false when none is unfinished.</summary>
    public bool MakeSome(int most) => database.Write(c =>
    {
        if (c.QueryFirstOrDefault<Row>(NextSql) is not { } roll)
            return false;
        var some = Math.Min(most, roll.Count - roll.Made);
        for (var i = 0; i < some; i++)
            c.Execute(InsertSql, new { Code = TagCode.Draw(RandomNumberGenerator.Fill), roll.Id, Now = clock.GetUtcNow() });
        c.Execute(MadeSql, new { roll.Id, some });
        return true;
    });

    private const string NextSql = "SELECT id, count, made, stock, made_at FROM tag_roll WHERE made < count ORDER BY id LIMIT 1";

    private const string InsertSql = "INSERT INTO tag (code, state, made_at, roll_id) VALUES (@Code, 'Unassigned', @Now, @Id)";

    private const string MadeSql = "UPDATE tag_roll SET made = made + @some WHERE id = @Id";

    /// <summary>The roll's codes, always in the same order; those that retired since are never printed again.</summary>
    public IReadOnlyList<TagCode> Codes(long roll) => database.Read(c => c.Query<TagCode>(CodesSql, new { roll }).ToList());

    private const string CodesSql = "SELECT code FROM tag WHERE roll_id = @roll AND state <> 'Retired' ORDER BY made_at, code";
}
