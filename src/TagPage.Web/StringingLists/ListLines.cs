using System.Globalization;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Records.StringingLists;
using TagPage.Web.Import;
using TagPage.Web.Words;

namespace TagPage.Web.StringingLists;

/// <summary>What becomes of each line of a list, in its order.</summary>
internal sealed class ListLines(
    ListSettings settings, ListClients clients, ListPlayers players, ListStrings strings, ListStringings stringings, ListRackets rackets, ListOnFileStore.Found found, IReadOnlySet<int> takenTickets)
{
    private readonly Dictionary<string, int> _seen = stringings.OnFile.ToDictionary(key => key, _ => 0);
    private readonly Dictionary<long, ListOnFileStore.Client> _clients = found.Clients.ToDictionary(client => client.Id);
    private readonly HashSet<int> _tickets = [.. takenTickets];
    private readonly HashSet<string> _filled = [];

    public PlannedLine Plan(ReadLine read)
    {
        if (read.Refused is { } refused)
            return new PlannedLine(read, LineState.Refused, [refused], null);
        if (stringings.Tension(read) is not { } tension)
            return new PlannedLine(read, LineState.Refused, ["The tension is not known, and nothing was said to write down in its place."], null);
        var (doubts, notes) = (read.Doubts.ToList(), read.Notes.ToList());
        if (read.Tension is null)
            notes.Add($"Written down for the tension: {new Tension(tension.Mains, tension.Unit!.Value)}");
        var line = Line(read, tension, doubts, notes);
        if (line.Note.Length > ImportLimits.Note)
            return new PlannedLine(read, LineState.Refused, [$"What would go into the job’s note is longer than {ImportLimits.Note} characters."], null);
        if (!_seen.TryAdd(ListStringings.Key(line), read.Line))
            return new PlannedLine(read, LineState.There, [_seen[ListStringings.Key(line)] is 0 ? "This stringing is on file." : $"This stringing stands in line {_seen[ListStringings.Key(line)]} already."], null);
        var fills = Fills(line);
        return new PlannedLine(read, doubts.Count > 0 ? LineState.Doubted : fills.Count > 0 ? LineState.Changed : LineState.New, [.. doubts, .. fills], line);
    }

    private StringingLine Line(ReadLine read, TensionReading tension, List<string> doubts, List<string> notes)
    {
        var (client, racket) = (clients.Of(read), rackets.Of(read));
        doubts.AddRange(racket.Doubts);
        if (read.Tension is not null && Unusual(tension, racket.Sport) is { } unusual)
            doubts.Add($"{unusual} is outside what is usual in {EnglishNames.Of(racket.Sport)}.");
        if (racket.Id is null && players.IsNew(client, racket.Player))
            doubts.Add($"“{racket.Player}” is not among the players of this client; a new player is added.");
        if (racket.Of > 1)
        {
            doubts.Add($"Which of {racket.Of} rackets of this frame it was is not said.");
            notes.Add($"Which of {racket.Of} rackets of this frame it was is not known.");
        }
        return new StringingLine
        {
            Line = read.Line,
            Household = clients.Household(client),
            ClientId = client.IsOnFile ? client.Id : null,
            Client = client.Name,
            Phone = client.Phone,
            Mail = client.Mail,
            Player = racket.Player,
            Junior = settings.Juniors && NameKey.Of(racket.Player) != NameKey.Of(read.Client),
            RacketId = racket.Id,
            RacketKey = racket.Key,
            Frame = read.Frame,
            Number = ListRackets.NumberOf(read.Marking),
            TapeColour = ListRackets.NumberOf(read.Marking) is null ? read.Marking : "",
            Sport = racket.Sport,
            Mains = strings.Of(read.Mains) ?? new ListString { Name = read.Mains.Name },
            Crosses = strings.Of(read.Crosses) ?? new ListString { Name = read.Crosses.Name },
            MainsTension = tension.Mains,
            CrossesTension = tension.Crosses,
            TensionUnit = tension.Unit!.Value,
            StrungOn = read.Day,
            StrungBy = read.StrungBy,
            Ticket = Ticket(read, doubts, notes),
            PriceMinor = read.PriceMinor,
            IsSettled = read.Day < settings.SettledBefore,
            Note = string.Join('\n', notes),
        };
    }

    private static Tension? Unusual(TensionReading reading, Sport sport) =>
        new[] { reading.Mains, reading.Crosses }.Select(value => new Tension(value, reading.Unit!.Value)).Where(t => TensionCheck.Of(sport, t) == TensionVerdict.Unusual).ToList() is [var first, ..] ? first : null;

    private int? Ticket(ReadLine read, List<string> doubts, List<string> notes)
    {
        if (read.Ticket is not { } ticket || _tickets.Add(ticket))
            return read.Ticket;
        doubts.Add($"Ticket {ticket} is taken; this job gets another number.");
        notes.Add(string.Create(CultureInfo.InvariantCulture, $"Ticket in the list: {ticket}"));
        return null;
    }

    /// <summary>What was missing on file, told once a client.</summary>
    private List<string> Fills(StringingLine line)
    {
        if (line.ClientId is not { } id || !_clients.TryGetValue(id, out var client) || !_filled.Add($"{id}"))
            return [];
        return [.. new[] { client.Phone is null && line.Phone is not null ? "The client’s phone number was missing on file and comes in." : null, client.Mail is null && line.Mail is not null ? "The client’s email address was missing on file and comes in." : null }.OfType<string>()];
    }
}
