using System.Globalization;
using TagPage.Core.Sports;
using TagPage.Records.Import;
using TagPage.Records.StringingLists;
using TagPage.Web.Words;

namespace TagPage.Web.StringingLists;

/// <summary>Which racket a line is about. Two of one frame on one day, two on file, or one of nobody in particular are asked about.</summary>
internal sealed class ListRackets
{
    /// <param name="Id">On file; null for a new one.</param>
    /// <param name="Key">Tells new ones apart.</param>
    /// <param name="Of">How many it may be, where the list does not say which; 1 where it is clear.</param>
    /// <param name="Player">Whose it is.</param>
    /// <param name="Sport">As on file; of a new one, the line’s.</param>
    /// <param name="Doubts">Why somebody should look at it once more.</param>
    public sealed record Choice(long? Id, string Key, int Of, string Player, Sport Sport, IReadOnlyList<string> Doubts);

    /// <param name="Line">Of the list.</param>
    /// <param name="Client">Whose it is.</param>
    /// <param name="Whose">Who plays with it.</param>
    public sealed record Item(ReadLine Line, ClientRow Client, ListPlayers.Whose Whose);

    /// <param name="OnFile">Null for a new one.</param>
    /// <param name="Player">Whose it is.</param>
    private sealed record Taken(ListOnFileStore.Racket? OnFile, string Player);

    private readonly Dictionary<int, Choice> _choices = [];
    private readonly List<RacketQuestion> _questions = [];
    private readonly HashSet<string> _open = [];
    private readonly ListPlayers _players;
    private readonly ListStringings _stringings;
    private readonly ListSettings _settings;

    public ListRackets(IEnumerable<Item> items, ListPlayers players, ListStringings stringings, ListSettings settings)
    {
        (_players, _stringings, _settings) = (players, stringings, settings);
        foreach (var group in items.GroupBy(item => $"{ListClients.Mark(item.Client)}|{item.Whose.Key}|{item.Line.Sport}|{NameKey.Of(item.Line.Frame)}|{NameKey.Of(item.Line.Marking)}"))
            Take(group.Key, [.. group]);
    }

    public IReadOnlyList<RacketQuestion> Questions => [.. _questions.OrderByDescending(q => q.Lines)];

    public IReadOnlySet<string> Open => _open;

    public Choice Of(ReadLine line) => _choices[line.Line];

    private void Take(string key, List<Item> items)
    {
        var (first, whose) = (items[0].Line, items[0].Whose);
        var mine = whose.OnFile is { } player ? _players.RacketsOf(player) : whose.Among.SelectMany(_players.RacketsOf);
        var candidates = ListFrames.Of(mine, first, items.Exists(item => item.Line.IsSportNamed));
        var most = first.Marking.Length > 0 ? 1 : items.GroupBy(item => item.Line.Day).Max(day => day.Count());
        if (whose.Among.Count == 0 && most == 1 && candidates.Count <= 1)
        {
            Give(items, [new Taken(candidates.FirstOrDefault(), whose.Name)], key, RacketQuestion.One);
            return;
        }
        var there = items.Select(item => (Item: item, OnFile: There(item, items, candidates))).ToLookup(known => known.OnFile is not null);
        foreach (var (item, racket) in there[true])
            Give([item], [new Taken(racket, whose.Name)], key, RacketQuestion.One);
        items = [.. there[false].Select(known => known.Item)];
        if (items.Count > 0)
            Ask(new RacketQuestion(key, whose.Name == first.Client ? first.Client : $"{whose.Name} ({first.Client})", first.Frame, first.Sport, items.Count, most, candidates, whose.Among), items, whose);
    }

    /// <summary>Of several rackets the one on which this stringing is on file, unless another of that day may be meant, too.</summary>
    private ListOnFileStore.Racket? There(Item item, List<Item> items, List<ListOnFileStore.Racket> candidates) =>
        items.Count(other => other.Line.Day == item.Line.Day) == 1 && candidates.Where(racket => _stringings.Has(item.Line, racket.Id)).ToList() is [var only] ? only : null;

    private void Ask(RacketQuestion question, List<Item> items, ListPlayers.Whose whose)
    {
        _questions.Add(question);
        var answer = _settings.Rackets.GetValueOrDefault(question.Key) ?? _settings.OtherRackets;
        var chosen = question.OnFile.FirstOrDefault(racket => answer == RacketQuestion.Of(racket));
        var player = question.Among.FirstOrDefault(player => answer == RacketQuestion.Of(player));
        if (answer is not (RacketQuestion.One or RacketQuestion.Several or RacketQuestion.NewOne) && chosen is null && player is null)
            _open.Add(question.Key);
        Taken Known(ListOnFileStore.Racket racket) => new(racket, question.PlayerOf(racket) ?? whose.Name);
        var another = new Taken(null, player?.Name ?? (question.OnFile.Count > 0 && answer == RacketQuestion.Several ? Known(question.OnFile[0]).Player : whose.Name));
        Taken[] taken = answer switch
        {
            RacketQuestion.Several => [.. Enumerable.Range(0, question.HowMany).Select(i => i < question.OnFile.Count ? Known(question.OnFile[i]) : another)],
            _ when chosen is not null => [Known(chosen)],
            _ => [answer == RacketQuestion.NewOne || player is not null || question.OnFile.Count == 0 ? another : Known(question.OnFile[0])],
        };
        Give(items, taken, question.Key, answer ?? RacketQuestion.One);
    }

    /// <summary>Of several, those that came on one day one after the other.</summary>
    private void Give(List<Item> items, Taken[] taken, string key, string answer)
    {
        foreach (var day in items.GroupBy(item => item.Line.Day))
            foreach (var (place, item) in day.Index())
            {
                var at = answer == RacketQuestion.Several ? place % taken.Length : 0;
                var (racket, player) = (taken[at].OnFile, taken[at].Player);
                _choices[item.Line.Line] = new Choice(racket?.Id, string.Create(CultureInfo.InvariantCulture, $"{key}#{at}"), taken.Length, player, racket?.Sport ?? item.Line.Sport, Doubts(item, racket, player, answer));
            }
    }

    private static List<string> Doubts(Item item, ListOnFileStore.Racket? racket, string player, string answer)
    {
        var doubts = new List<string>();
        if (item.Whose.Doubt is { } doubt)
            doubts.Add(doubt);
        if (item.Whose.Among.Count > 0 && racket is not null && answer == RacketQuestion.One)
            doubts.Add($"No player is named; taken for {player}, who has this frame.");
        if (racket is not null && racket.Sport != item.Line.Sport)
            doubts.Add($"Taken for racket {racket.Number} on file, which is for {EnglishNames.Of(racket.Sport)}.");
        return doubts;
    }

    /// <summary>“2”, “#2”, “No. 2”; null for a colour.</summary>
    public static int? NumberOf(string marking) =>
        int.TryParse(string.Concat(marking.Where(char.IsAsciiDigit)), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 999 && marking.Count(char.IsLetter) <= 2 ? number : null;
}
