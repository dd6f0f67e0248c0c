using System.Globalization;
using TagPage.Records.Import;
using TagPage.Records.StringingLists;

namespace TagPage.Web.StringingLists;

/// <summary>Which racket a line is about. Two of one frame on one day, or two on file, are asked about.</summary>
internal sealed class ListRackets
{
    /// <param name="Id">On file; null for a new one.</param>
    /// <param name="Key">Tells new ones apart.</param>
    /// <param name="Of">How many it may be, where the list does not say which; 1 where it is clear.</param>
    public sealed record Choice(long? Id, string Key, int Of);

    /// <param name="Line">Of the list.</param>
    /// <param name="Client">Whose it is.</param>
    /// <param name="Player">On file; null for a new one.</param>
    public sealed record Item(ReadLine Line, ClientRow Client, long? Player);

    private readonly Dictionary<int, Choice> _choices = [];
    private readonly List<RacketQuestion> _questions = [];
    private readonly HashSet<string> _open = [];
    private readonly ListSettings _settings;

    public ListRackets(IEnumerable<Item> items, ILookup<long, ListOnFileStore.Racket> onFile, ListSettings settings)
    {
        _settings = settings;
        foreach (var group in items.GroupBy(item => $"{ListClients.Mark(item.Client)}|{NameKey.Of(item.Line.Player)}|{item.Line.Sport}|{NameKey.Of(item.Line.Frame)}|{NameKey.Of(item.Line.Marking)}"))
            Take(group.Key, [.. group], onFile);
    }

    public IReadOnlyList<RacketQuestion> Questions => [.. _questions.OrderByDescending(q => q.Lines)];

    public IReadOnlySet<string> Open => _open;

    public Choice Of(ReadLine line) => _choices[line.Line];

    private void Take(string key, List<Item> items, ILookup<long, ListOnFileStore.Racket> onFile)
    {
        var first = items[0].Line;
        var candidates = items[0].Player is { } player ? onFile[player].Where(racket => Fits(racket, first)).ToList() : [];
        var most = first.Marking.Length > 0 ? 1 : items.GroupBy(item => item.Line.Day).Max(day => day.Count());
        if (most == 1 && candidates.Count <= 1)
            Give(items, [candidates.Count > 0 ? candidates[0].Id : null], key, RacketQuestion.One);
        else
            Ask(new RacketQuestion(key, first.Player == first.Client ? first.Client : $"{first.Player} ({first.Client})", first.Frame, first.Sport, items.Count, most, candidates), items);
    }

    private void Ask(RacketQuestion question, List<Item> items)
    {
        _questions.Add(question);
        var answer = _settings.Rackets.GetValueOrDefault(question.Key) ?? _settings.OtherRackets;
        var chosen = question.OnFile.FirstOrDefault(racket => answer == $"racket{racket.Id}");
        if (answer is not (RacketQuestion.One or RacketQuestion.Several or RacketQuestion.NewOne) && chosen is null)
            _open.Add(question.Key);
        long?[] ids = answer switch
        {
            RacketQuestion.Several => [.. Enumerable.Range(0, question.HowMany).Select(i => i < question.OnFile.Count ? (long?)question.OnFile[i].Id : null)],
            RacketQuestion.NewOne => [null],
            _ => [chosen?.Id ?? (question.OnFile.Count > 0 ? question.OnFile[0].Id : null)],
        };
        Give(items, ids, question.Key, answer ?? RacketQuestion.One);
    }

    /// <summary>Of several, those that came on one day one after the other.</summary>
    private void Give(List<Item> items, long?[] ids, string key, string answer)
    {
        foreach (var day in items.GroupBy(item => item.Line.Day))
            foreach (var (place, item) in day.Index())
            {
                var at = answer == RacketQuestion.Several ? place % ids.Length : 0;
                _choices[item.Line.Line] = new Choice(ids[at], string.Create(CultureInfo.InvariantCulture, $"{key}#{at}"), ids.Length);
            }
    }

    private static bool Fits(ListOnFileStore.Racket racket, ReadLine line) =>
        racket.Sport == line.Sport && NameKey.Of(racket.Frame) == NameKey.Of(line.Frame)
        && (line.Marking.Length == 0 || (NumberOf(line.Marking) is { } number ? racket.Number == number : NameKey.Of(racket.TapeColour) == NameKey.Of(line.Marking)));

    /// <summary>“2”, “#2”, “No. 2”; null for a colour.</summary>
    public static int? NumberOf(string marking) =>
        int.TryParse(string.Concat(marking.Where(char.IsAsciiDigit)), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 999 && marking.Count(char.IsLetter) <= 2 ? number : null;
}
