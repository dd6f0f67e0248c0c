using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Rackets;
using TagPage.Records.Import;

namespace TagPage.Records.StringingLists;

/// <summary>Some lines of a list as records to be written, those on file found again.</summary>
internal sealed class ListBatch
{
    internal sealed record OnFile(
        HashSet<long> Clients, IReadOnlyList<(long Id, long ClientId, string Name)> Players, IReadOnlyList<(long Id, long PlayerId, int Number)> Rackets,
        Dictionary<string, ImportRowStore.KnownString> Strings, HashSet<(long, DateOnly, long, long, decimal, decimal, string)> Jobs, int NextTicket, HashSet<int> TakenTickets);

    private readonly OnFile _onFile;
    private readonly Dictionary<int, ClientRow> _clients = [];
    private readonly Dictionary<(int, string), PlayerRow> _players = [];
    private readonly Dictionary<(int Household, string Key), RacketRow> _rackets = [];
    private readonly Dictionary<string, StringRow> _strings = [];
    private readonly Dictionary<PlayerRow, HashSet<int>> _numbers = new(ReferenceEqualityComparer.Instance);
    private readonly HashSet<int> _tickets;
    private int _nextTicket;

    private ListBatch(OnFile onFile) => (_onFile, _nextTicket, _tickets) = (onFile, onFile.NextTicket, [.. onFile.TakenTickets]);

    public ImportBatch Batch { get; } = new();

    /// <summary>Lines whose client or racket is gone.</summary>
    public int Missed { get; private set; }

    /// <summary>Lines whose stringing came on file meanwhile.</summary>
    public int There { get; private set; }

    public static ListBatch Of(IReadOnlyList<StringingLine> lines, OnFile onFile)
    {
        var batch = new ListBatch(onFile);
        batch._nextTicket = Math.Max(batch._nextTicket, 1 + (lines.Max(l => l.Ticket) ?? 0));
        foreach (var line in lines)
            batch.Add(line);
        return batch;
    }

    /// <summary>Null where none of its household was written.</summary>
    public long? ClientOf(StringingLine line) => _clients.TryGetValue(line.Household, out var client) ? client.Id : null;

    public IEnumerable<(string Key, long Id)> NewRacketsOf(int household) =>
        _rackets.Where(pair => pair.Key.Household == household && !pair.Value.IsOnFile).Select(pair => (pair.Key.Key, pair.Value.Id));

    private void Add(StringingLine line)
    {
        if (line.ClientId is { } client && !_onFile.Clients.Contains(client))
        {
            Missed++;
            return;
        }
        if (Racket(line) is not { } racket)
        {
            Missed++;
            return;
        }
        var (mains, crosses) = (String(line.Mains), String(line.Crosses));
        if (IsThere(line, racket, mains, crosses))
            There++;
        else
            Batch.Jobs.Add(Job(line, racket, mains, crosses));
    }

    private ClientRow Client(StringingLine line)
    {
        if (_clients.TryGetValue(line.Household, out var known))
            return known;
        var client = new ClientRow { Line = line.Line, Name = line.Client, Phone = line.Phone, Mail = line.Mail, Language = "en", Reminders = true, IsOnFile = line.ClientId is not null, Id = line.ClientId ?? 0 };
        Batch.Clients.Add(null, client);
        return _clients[line.Household] = client;
    }

    private PlayerRow Player(StringingLine line)
    {
        var key = (line.Household, NameKey.Of(line.Player));
        if (_players.TryGetValue(key, out var known))
            return known;
        var client = Client(line);
        var id = client.IsOnFile ? _onFile.Players.Where(p => p.ClientId == client.Id && NameKey.Of(p.Name) == key.Item2).Select(p => (long?)p.Id).FirstOrDefault() : null;
        var player = new PlayerRow { Line = line.Line, Client = client, Name = line.Player, Junior = line.Junior, IsOnFile = id is not null, Id = id ?? 0 };
        Batch.Players.Add(null, player);
        _numbers[player] = id is null ? [] : [.. _onFile.Rackets.Where(r => r.PlayerId == id).Select(r => r.Number)];
        return _players[key] = player;
    }

    /// <summary>Null where it was on file and is gone.</summary>
    private RacketRow? Racket(StringingLine line)
    {
        var key = (line.Household, line.RacketId is { } known ? $"on file {known}" : line.RacketKey);
        if (_rackets.TryGetValue(key, out var racket))
            return racket;
        if (line.RacketId is { } id)
        {
            if (_onFile.Rackets.All(r => r.Id != id))
                return null;
            Client(line);
            racket = new RacketRow { Line = line.Line, IsOnFile = true, Id = id };
        }
        else
        {
            var player = Player(line);
            racket = new RacketRow { Line = line.Line, Player = player, Number = Number(player, line.Number), State = RacketState.InTurn, Sport = line.Sport, Frame = line.Frame, TapeColour = line.TapeColour, HeadSizeUnit = "in2" };
        }
        Batch.Rackets.Add(null, racket);
        return _rackets[key] = racket;
    }

    private int Number(PlayerRow player, int? wished)
    {
        var taken = _numbers[player];
        if (wished is { } number && taken.Add(number))
            return number;
        var free = Enumerable.Range(1, 999).First(n => !taken.Contains(n));
        taken.Add(free);
        return free;
    }

    private StringRow String(ListString wanted)
    {
        var key = ImportRowStore.StringKey(wanted.Name, wanted.GaugeMm);
        if (_strings.TryGetValue(key, out var known))
            return known;
        var onFile = _onFile.Strings.GetValueOrDefault(key);
        var row = new StringRow { Name = wanted.Name, Material = wanted.Material, GaugeMm = wanted.GaugeMm, IsOnFile = onFile is not null, Id = onFile?.Id ?? 0 };
        Batch.Strings.Add(null, row);
        return _strings[key] = row;
    }

    private bool IsThere(StringingLine line, RacketRow racket, StringRow mains, StringRow crosses) =>
        racket.IsOnFile && mains.IsOnFile && crosses.IsOnFile
        && _onFile.Jobs.Contains((racket.Id, line.StrungOn, mains.Id, crosses.Id, line.MainsTension, line.CrossesTension, line.TensionUnit.ToString()));

    private JobRow Job(StringingLine line, RacketRow racket, StringRow mains, StringRow crosses) => new()
    {
        Line = line.Line,
        Ticket = line.Ticket is { } ticket && _tickets.Add(ticket) ? ticket : Next(),
        Racket = racket,
        State = line.IsSettled ? JobState.Collected : JobState.Strung,
        Mains = mains,
        Crosses = crosses,
        MainsSuppliedBy = Supplier.Shop,
        CrossesSuppliedBy = Supplier.Shop,
        MainsTension = line.MainsTension,
        CrossesTension = line.CrossesTension,
        TensionUnit = line.TensionUnit,
        Pieces = 2,
        ReceivedOn = line.StrungOn,
        StrungOn = line.StrungOn,
        StrungBy = line.StrungBy,
        CollectedOn = line.IsSettled ? line.StrungOn : null,
        PriceMinor = line.PriceMinor,
        PaidOn = line.IsSettled ? line.StrungOn : null,
        PaidHow = PaymentMethod.Before,
        Note = line.Note,
    };

    private int Next()
    {
        while (!_tickets.Add(_nextTicket))
            _nextTicket++;
        return _nextTicket++;
    }
}
