using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>What an import found and did, or would do.</summary>
public sealed record ImportReport
{
    /// <summary>What stops it, as far as it is listed.</summary>
    public required IReadOnlyList<Problem> Problems { get; init; }

    /// <summary>How many more there are.</summary>
    public required int MoreProblems { get; init; }

    /// <summary>What is worth a second look but stops nothing.</summary>
    public required IReadOnlyList<Problem> Notices { get; init; }

    public required int MoreNotices { get; init; }

    /// <summary>Kinds of records with their numbers, in words: "20 clients".</summary>
    public required IReadOnlyList<string> Records { get; init; }

    public bool IsClean => Problems.Count == 0;

    /// <summary>"20 clients, 25 players and 18 strings".</summary>
    public string Summary => Records.Count switch
    {
        0 => "nothing, because the files hold no records",
        1 => Records[0],
        _ => string.Join(", ", Records.SkipLast(1)) + " and " + Records[^1],
    };

    public static ImportReport Of(ImportReading reading, IReadOnlyList<ImportClash> clashes) => new()
    {
        Problems = [.. reading.Problems.Kept.Concat(clashes.Select(Clashes.Of)).Take(Csv.Problems.Most)],
        MoreProblems = Math.Max(0, reading.Problems.Count + clashes.Count - Csv.Problems.Most),
        Notices = reading.Notices.Kept,
        MoreNotices = reading.Notices.More,
        Records = [.. Count(reading.Batch)],
    };

    private static IEnumerable<string> Count(ImportBatch batch)
    {
        var tags = batch.Tags.ToList();
        (int Number, string One, string Many)[] kinds =
        [
            (batch.Clients.Rows.Count, "client", "clients"),
            (batch.Players.Rows.Count, "player", "players"),
            (batch.Strings.Rows.Count, "string", "strings"),
            (batch.Rackets.Rows.Count, "racket", "rackets"),
            (tags.Count(t => t.IsLive), "live tag", "live tags"),
            (tags.Count(t => !t.IsLive), "retired tag", "retired tags"),
            (batch.Specs.Count, "spec", "specs"),
            (batch.Jobs.Count, "job", "jobs"),
        ];
        return kinds.Where(k => k.Number > 0).Select(k => $"{k.Number} {(k.Number == 1 ? k.One : k.Many)}");
    }
}
