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

    /// <summary>Clients who may be on file, or twice in the files.</summary>
    public required IReadOnlyList<ImportMatch> Matches { get; init; }

    /// <summary>Those of whom it is not decided who they are: nothing comes in.</summary>
    public required IReadOnlyList<ImportMatch> Undecided { get; init; }

    /// <summary>Kinds of new records with their numbers, in words: "20 clients".</summary>
    public required IReadOnlyList<string> Records { get; init; }

    /// <summary>The same of what is there already.</summary>
    public required IReadOnlyList<string> There { get; init; }

    /// <summary>The same of all that the files hold, new or not.</summary>
    public required IReadOnlyList<string> InFiles { get; init; }

    public required int CountedAsCollected { get; init; }

    public required int CountedAsPaid { get; init; }

    /// <summary>Old jobs that are left uncollected or unpaid.</summary>
    public required int LeftOpen { get; init; }

    /// <summary>All can come in.</summary>
    public bool IsClean => Problems.Count == 0 && Undecided.Count == 0;

    /// <summary>"20 clients, 25 players and 18 strings".</summary>
    public string Summary => Records.Count > 0 ? List(Records)
        : There.Count > 0 ? "nothing, because all of it is already there"
        : "nothing, because the files hold no records";

    /// <summary>"2 clients and 3 rackets"; null for none.</summary>
    public string? AlreadyThere => There.Count > 0 ? List(There) : null;

    /// <summary>"20 clients and 25 players": all that was read.</summary>
    public string Held => InFiles.Count > 0 ? List(InFiles) : "no records";

    /// <summary>What the owner's day for old jobs did; null for nothing.</summary>
    public string? Settled => (CountedAsCollected, CountedAsPaid) is (0, 0) ? null
        : $"{Jobs(CountedAsCollected)} as collected and {Jobs(CountedAsPaid)} as paid that the files leave open";

    public static ImportReport Of(ImportReading reading, ImportFinding finding) => new()
    {
        Problems = [.. reading.Problems.Kept.Concat(finding.Clashes.Select(Clashes.Of)).Take(Csv.Problems.Most)],
        MoreProblems = Math.Max(0, reading.Problems.Count + finding.Clashes.Count - Csv.Problems.Most),
        Notices = reading.Notices.Kept,
        MoreNotices = reading.Notices.More,
        Matches = finding.Matches,
        Undecided = finding.Undecided,
        Records = [.. Count(reading.Batch, there: false)],
        There = [.. Count(reading.Batch, there: true)],
        InFiles = [.. Count(reading.Batch, there: null)],
        CountedAsCollected = reading.Batch.NewJobs.Count(job => job.CountedAsCollected),
        CountedAsPaid = reading.Batch.NewJobs.Count(job => job.CountedAsPaid),
        LeftOpen = reading.Batch.NewJobs.Count(job => job.LeftOpen),
    };

    /// <param name="batch">All rows.</param>
    /// <param name="there">Only those on file already, or only those that are not; null for all.</param>
    private static IEnumerable<string> Count(ImportBatch batch, bool? there)
    {
        (int Number, string One, string Many)[] kinds =
        [
            (Rows(batch.Clients.Rows), "client", "clients"),
            (Rows(batch.Players.Rows), "player", "players"),
            (Rows(batch.Strings.Rows), "string", "strings"),
            (Rows(batch.Frames), "frame", "frames"),
            (Rows(batch.Rackets.Rows), "racket", "rackets"),
            (batch.Tags.Count(t => Is(t.IsOnFile) && t.IsLive), "live tag", "live tags"),
            (batch.Tags.Count(t => Is(t.IsOnFile) && !t.IsLive), "retired tag", "retired tags"),
            (Rows(batch.Specs), "spec", "specs"),
            (Rows(batch.Places), "place", "places"),
            (Rows(batch.Pieces), "piece", "pieces"),
            (Rows(batch.Jobs), "job", "jobs"),
        ];
        return kinds.Where(k => k.Number > 0).Select(k => $"{k.Number} {(k.Number == 1 ? k.One : k.Many)}");

        int Rows(IEnumerable<ImportRow> rows) => rows.Count(r => Is(r.IsThere));

        bool Is(bool isThere) => there is null || there == isThere;
    }

    private static string Jobs(int number) => number == 1 ? "1 job" : $"{number} jobs";

    private static string List(IReadOnlyList<string> kinds) =>
        kinds.Count == 1 ? kinds[0] : string.Join(", ", kinds.SkipLast(1)) + " and " + kinds[^1];
}
