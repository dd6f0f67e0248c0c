using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Records.StringingLists;
using TagPage.Records.Strings;

namespace TagPage.Web.StringingLists;

/// <summary>Finds out what of a list is on file and what would become of each line. Saves nothing.</summary>
public sealed class ListPlanner(ImportStore imports, ListOnFileStore onFile, StringStore strings, ShopStore shops)
{
    public ListPlan Plan(ListReading reading, ListSettings settings, ImportChoices choices)
    {
        var readable = reading.Lines.Where(line => line.Refused is null).ToList();
        var clients = new ListClients(readable);
        var finding = imports.Look(clients.Batch, choices);
        var found = onFile.Of(clients.Batch.Clients.Rows.Where(row => row.IsOnFile).Select(row => row.Id));
        var players = new ListPlayers(found);
        var named = new ListStrings(strings.List(), settings.Strings, readable);
        var stringings = new ListStringings(found, named, settings, shops.Get());
        var rackets = new ListRackets(readable.Select(line => new ListRackets.Item(line, clients.Of(line), players.Of(line, clients.Of(line)))), players, stringings, settings);
        var work = new ListLines(settings, clients, players, named, stringings, rackets, found, onFile.TakenTickets());
        return new ListPlan
        {
            Reading = reading,
            Matches = finding.Matches,
            Undecided = finding.Undecided,
            Strings = named.Questions,
            OpenStrings = named.Open,
            Rackets = rackets.Questions,
            OpenRackets = rackets.Open,
            Lines = [.. reading.Lines.Select(work.Plan)],
        };
    }
}
