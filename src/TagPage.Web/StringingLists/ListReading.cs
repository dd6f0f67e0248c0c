using TagPage.Core.Units;

namespace TagPage.Web.StringingLists;

/// <summary>A habit of writing that a list leaves open.</summary>
/// <param name="Left">What it may be.</param>
/// <param name="Example">A cell that is read otherwise under each.</param>
public sealed record OpenHabit<T>(IReadOnlyList<T> Left, string Example);

/// <summary>All of a list, and what about its writing has to be asked.</summary>
public sealed record ListReading
{
    public IReadOnlyList<ReadLine> Lines { get; init; } = [];
    public OpenHabit<DayOrder>? Days { get; init; }
    public OpenHabit<DayCount>? Counted { get; init; }
    public OpenHabit<DecimalMark>? Decimals { get; init; }
    public OpenHabit<TensionUnit>? Unit { get; init; }

    /// <summary>It is not said of every racket, and not in the settings.</summary>
    public bool LacksSport { get; init; }

    /// <summary>Lines without a tension that can be read, also those that only an open question keeps from being read.</summary>
    public int WithoutTension => Lines.Count(line => line is { Tension: null, Client.Length: > 0 });

    public bool IsOpen => Days is not null || Counted is not null || Decimals is not null || Unit is not null || LacksSport;
}
