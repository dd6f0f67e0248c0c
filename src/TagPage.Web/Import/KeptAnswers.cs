using System.Text.Json;
using TagPage.Records.Import;

namespace TagPage.Web.Import;

/// <summary>Who is who, as it was answered for files that have to be sent again: lines move when a file is corrected, people stay.</summary>
public sealed class KeptAnswers(Uploads uploads)
{
    private const string File = "answers.json";

    /// <param name="Client">Of the files: name, phone and email.</param>
    /// <param name="Is">The key of a client on file, the name, phone and email of another line, or that it is somebody else.</param>
    private sealed record Answer(string Client, string Is);

    /// <summary>Keeps what was answered about the files of a key.</summary>
    public void Keep(string key, IEnumerable<ImportMatch> matches, ImportChoices choices)
    {
        var answers = from match in matches
                      let chosen = choices.Of(match)
                      let same = match.Lookalikes.FirstOrDefault(l => l.Key == chosen)
                      where same is not null || chosen == ImportChoices.Apart
                      select new Answer(MatchWords.Who(match.Client), same is null ? ImportChoices.Apart : Mark(same));
        uploads.Add(key, File, JsonSerializer.SerializeToUtf8Bytes(answers));
    }

    /// <summary>Hands the answers on to files that were sent in place of others.</summary>
    public void HandOn(string? from, string to)
    {
        if (Read(from) is { Length: > 0 } answers)
            uploads.Add(to, File, JsonSerializer.SerializeToUtf8Bytes(answers));
    }

    public bool AreThere(string? key) => Read(key).Length > 0;

    /// <summary>The answers by the lines these clients stand in now.</summary>
    public IReadOnlyDictionary<int, string> ByLine(string key, IReadOnlyList<ImportMatch> matches)
    {
        var answers = Read(key).GroupBy(a => a.Client).ToDictionary(g => g.Key, g => g.First().Is);
        var byLine = new Dictionary<int, string>();
        foreach (var match in matches)
            if (answers.TryGetValue(MatchWords.Who(match.Client), out var answer) && Choice(match, answer) is { } choice)
                byLine[match.Client.Line] = choice;
        return byLine;
    }

    private static string? Choice(ImportMatch match, string answer) =>
        answer == ImportChoices.Apart ? answer : match.Lookalikes.FirstOrDefault(l => Mark(l) == answer)?.Key;

    private static string Mark(Lookalike alike) => alike.Line is { } line ? MatchWords.Who(line) : alike.Key;

    private Answer[] Read(string? key) =>
        key is not null && uploads.FolderOf(key) is { } folder && Path.Combine(folder, File) is var path && System.IO.File.Exists(path)
            ? JsonSerializer.Deserialize<Answer[]>(System.IO.File.ReadAllBytes(path)) ?? []
            : [];
}
