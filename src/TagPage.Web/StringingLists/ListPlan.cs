using TagPage.Core.Sports;
using TagPage.Records.Import;
using TagPage.Records.StringingLists;

namespace TagPage.Web.StringingLists;

/// <summary>What becomes of a line.</summary>
public enum LineState
{
    New,

    /// <summary>Also fills in what was missing on file.</summary>
    Changed,

    /// <summary>Comes in, and somebody should look at it.</summary>
    Doubted,

    /// <summary>On file already, or twice in the list.</summary>
    There,

    Refused,
}

/// <param name="Read">As it was read.</param>
/// <param name="State">What becomes of it.</param>
/// <param name="Reasons">Why.</param>
/// <param name="Write">What would be written; null where nothing is.</param>
public sealed record PlannedLine(ReadLine Read, LineState State, IReadOnlyList<string> Reasons, StringingLine? Write);

/// <summary>A string that the catalogue does not have under this name.</summary>
public sealed record StringQuestion(string Key, StringText Text, int Lines);

/// <summary>Lines that may be of one racket or of several.</summary>
/// <param name="Key">How an answer names it.</param>
/// <param name="Who">Client and player.</param>
/// <param name="Frame">As the list writes it.</param>
/// <param name="Sport">Of the racket.</param>
/// <param name="Lines">How many.</param>
/// <param name="MostOnADay">How many of them on the busiest day.</param>
/// <param name="OnFile">Rackets of this frame that the player has, or any of the client’s players where none is named.</param>
/// <param name="Among">The client’s players, where the list names none and it is open which of them it is.</param>
public sealed record RacketQuestion(
    string Key, string Who, string Frame, Sport Sport, int Lines, int MostOnADay, IReadOnlyList<ListOnFileStore.Racket> OnFile, IReadOnlyList<ListOnFileStore.Player> Among)
{
    public const string One = "one", Several = "several", NewOne = "new";

    /// <summary>The answer that all lines are of this racket.</summary>
    public static string Of(ListOnFileStore.Racket racket) => $"racket{racket.Id}";

    /// <summary>The answer that they are of a racket of this player that is not on file yet.</summary>
    public static string Of(ListOnFileStore.Player player) => $"player{player.Id}";

    /// <summary>Null where all are of the same player.</summary>
    public string? PlayerOf(ListOnFileStore.Racket racket) => Among.FirstOrDefault(player => player.Id == racket.PlayerId)?.Name;

    /// <summary>As many as came on one day or are on file.</summary>
    public int HowMany => Math.Max(MostOnADay, OnFile.Count);
}

/// <summary>What a list would do, line by line, and what has to be answered first.</summary>
public sealed record ListPlan
{
    public required ListReading Reading { get; init; }
    public IReadOnlyList<PlannedLine> Lines { get; init; } = [];
    public IReadOnlyList<ImportMatch> Matches { get; init; } = [];
    public IReadOnlyList<ImportMatch> Undecided { get; init; } = [];
    public IReadOnlyList<StringQuestion> Strings { get; init; } = [];
    public IReadOnlyList<RacketQuestion> Rackets { get; init; } = [];

    /// <summary>Those not answered yet.</summary>
    public IReadOnlySet<string> OpenStrings { get; init; } = new HashSet<string>();
    public IReadOnlySet<string> OpenRackets { get; init; } = new HashSet<string>();

    public bool IsComplete => !Reading.IsOpen && Undecided.Count == 0 && OpenStrings.Count == 0 && OpenRackets.Count == 0;

    public int Count(LineState state) => Lines.Count(line => line.State == state);
}
