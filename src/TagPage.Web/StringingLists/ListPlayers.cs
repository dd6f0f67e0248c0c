using TagPage.Records.Import;
using TagPage.Records.StringingLists;

namespace TagPage.Web.StringingLists;

/// <summary>
/// Who plays with the racket of a line. Where the list names nobody, it is the client’s only player, or of several the one who has
/// that frame; a name in full is also that of a player who is on file by the given name.
/// </summary>
internal sealed class ListPlayers(ListOnFileStore.Found found)
{
    /// <param name="OnFile">Null for a new one.</param>
    /// <param name="Name">As on file, or as the list has it.</param>
    public sealed record Whose(ListOnFileStore.Player? OnFile, string Name)
    {
        /// <summary>The client’s players, where it is open which of them it is.</summary>
        public IReadOnlyList<ListOnFileStore.Player> Among { get; init; } = [];

        /// <summary>Why somebody should look at it once more.</summary>
        public string? Doubt { get; init; }

        public string Key => OnFile is { } player ? $"player{player.Id}" : NameKey.Of(Name);
    }

    private readonly ILookup<long, ListOnFileStore.Player> _players = found.Players.ToLookup(player => player.ClientId);
    private readonly ILookup<long, ListOnFileStore.Racket> _rackets = found.Rackets.ToLookup(racket => racket.PlayerId);
    private readonly HashSet<(long Racket, DateOnly Day)> _strung = [.. found.Stringings.Select(job => (job.RacketId, job.StrungOn))];

    public IEnumerable<ListOnFileStore.Racket> RacketsOf(ListOnFileStore.Player player) => _rackets[player.Id];

    public bool IsNew(ClientRow client, string player) => Of(client) is { Count: > 0 } all && all.All(p => NameKey.Of(p.Name) != NameKey.Of(player));

    public Whose Of(ReadLine line, ClientRow client) =>
        Of(client) is not { Count: > 0 } all ? new Whose(null, line.Player)
        : line.IsPlayerNamed ? Named(all, line) is { } named ? Known(named) : new Whose(null, line.Player)
        : all is [var only] ? Known(only)
        : Unnamed(all, line);

    private List<ListOnFileStore.Player> Of(ClientRow client) => client.IsOnFile ? [.. _players[client.Id]] : [];

    private Whose Unnamed(List<ListOnFileStore.Player> all, ReadLine line)
    {
        var owners = all.Where(player => Frames(player, line).Count > 0).ToList();
        var then = owners.Where(player => Frames(player, line).Exists(racket => _strung.Contains((racket.Id, line.Day)))).ToList();
        return (owners, then, Named(all, line)) switch
        {
            ([var owner], _, _) => Known(owner),
            ({ Count: > 1 }, [var owner], _) => Doubted(owner, "who has this frame, strung on this day"),
            ([], _, { } namesake) => Doubted(namesake, "by name"),
            _ => new Whose(null, line.Player) { Among = all },
        };
    }

    private List<ListOnFileStore.Racket> Frames(ListOnFileStore.Player player, ReadLine line) => ListFrames.Of(_rackets[player.Id], line, line.IsSportNamed);

    /// <summary>The line’s player by name, or by given name where the rest of it is the client’s.</summary>
    private static ListOnFileStore.Player? Named(List<ListOnFileStore.Player> all, ReadLine line) =>
        all.Find(player => NameKey.Of(player.Name) == NameKey.Of(line.Player))
        ?? (all.Where(player => IsGivenName(Words(player.Name), Words(line.Player), Words(line.Client))).ToList() is [var only] ? only : null);

    private static bool IsGivenName(string[] given, string[] full, string[] client) => given.Length > 0 && !given.Except(full).Any() && !full.Except(given).Except(client).Any();

    private static string[] Words(string name) => NameKey.Of(name).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static Whose Known(ListOnFileStore.Player player) => new(player, player.Name);

    private static Whose Doubted(ListOnFileStore.Player player, string why) => Known(player) with { Doubt = $"No player is named; taken for {player.Name}, {why}." };
}
