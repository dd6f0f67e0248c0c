using TagPage.Records.Import;

namespace TagPage.Web.StringingLists;

/// <summary>The clients of a list: lines of one name, phone number and email address are one; who of them may be on file is asked.</summary>
internal sealed class ListClients
{
    private readonly Dictionary<string, ClientRow> _byKey = [];
    private readonly Dictionary<string, List<string>> _reached = [];
    private readonly Dictionary<string, int> _households = [];

    public ImportBatch Batch { get; } = new();

    public ListClients(IEnumerable<ReadLine> lines)
    {
        var all = lines.ToList();
        foreach (var line in all.Where(IsReached))
            if (_byKey.TryAdd(Key(line), Row(line)))
            {
                if (!_reached.TryGetValue(NameKey.Of(line.Client), out var keys))
                    _reached[NameKey.Of(line.Client)] = keys = [];
                keys.Add(Key(line));
            }
        // A line without phone and email belongs to the only client of its name that has one.
        foreach (var line in all.Where(line => !IsReached(line)))
            if (_reached.GetValueOrDefault(NameKey.Of(line.Client)) is not [_])
                _byKey.TryAdd(Key(line), Row(line));
        foreach (var row in _byKey.Values.OrderBy(row => row.Line))
            Batch.Clients.Add(null, row);
    }

    /// <summary>Whoever this line is about, once it was decided who is who.</summary>
    public ClientRow Of(ReadLine line)
    {
        var row = !IsReached(line) && _reached.GetValueOrDefault(NameKey.Of(line.Client)) is [var only] ? _byKey[only] : _byKey[Key(line)];
        while (row.SameAs is ClientRow same)
            row = same;
        return row;
    }

    /// <summary>The same for all lines of one client.</summary>
    public int Household(ClientRow client)
    {
        var mark = Mark(client);
        if (!_households.TryGetValue(mark, out var household))
            _households[mark] = household = _households.Count + 1;
        return household;
    }

    public static string Mark(ClientRow client) => client.IsOnFile ? $"client{client.Id}" : $"line{client.Line}";

    private static ClientRow Row(ReadLine line) => new() { Line = line.Line, Name = line.Client, Phone = line.Phone, Mail = line.Mail, Language = "en", Reminders = true };

    private static bool IsReached(ReadLine line) => (line.Phone ?? line.Mail) is not null;

    private static string Key(ReadLine line) => $"{NameKey.Of(line.Client)}|{line.Phone}|{line.Mail?.ToUpperInvariant()}";
}
