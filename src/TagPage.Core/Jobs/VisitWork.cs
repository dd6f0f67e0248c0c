namespace TagPage.Core.Jobs;

/// <summary>What is done on a racket whose strings stay in it. Measuring: of the string bed; Balance: weights added or taken off.</summary>
public enum VisitWork { Grip, Grommets, Bumper, Balance, Check, Measuring, Other }

public static class VisitWorks
{
    /// <summary>Of names with blanks between them, in the order of their kinds.</summary>
    public static IReadOnlyList<VisitWork> Of(string? names) => [.. (names ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Enum.Parse<VisitWork>).Order()];
}
