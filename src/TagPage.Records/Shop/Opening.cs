namespace TagPage.Records.Shop;

/// <summary>When the shop is open, as far as the owner said.</summary>
/// <param name="Week">By weekday and time. Empty where nobody said so; then every day counts as open.</param>
/// <param name="Closed">Days on which it is closed all the same, the earliest first.</param>
public sealed record Opening(IReadOnlyList<OpeningSpan> Week, IReadOnlyList<ClosedDays> Closed)
{
    /// <summary>Further ahead nobody plans.</summary>
    private const int MostDaysAhead = 366;

    public static Opening Unknown { get; } = new([], []);

    public IEnumerable<OpeningSpan> On(int weekday) => Week.Where(span => span.Weekday == weekday);

    public bool IsOpen(DateOnly day) => (Week.Count == 0 || On(Weekday(day)).Any()) && ClosedOn(day) is null;

    /// <summary>Minutes that it is still open on that day after that time; null where nobody said when it is open.</summary>
    public int? MinutesLeft(DateTime at) => Week.Count == 0 ? null : Spans(DateOnly.FromDateTime(at)).Sum(span => Math.Max(0, span.ClosesAt - Math.Max(span.OpensAt, MinuteOf(at))));

    /// <summary>When it closes for that day, in minutes since midnight; null where it is closed all day.</summary>
    public int? ClosesAt(DateOnly day) => Spans(day).Select(span => (int?)span.ClosesAt).Max();

    private IEnumerable<OpeningSpan> Spans(DateOnly day) => ClosedOn(day) is null ? On(Weekday(day)) : [];

    private static int MinuteOf(DateTime at) => at.Hour * 60 + at.Minute;

    public ClosedDays? ClosedOn(DateOnly day) => Closed.FirstOrDefault(days => days.FromOn <= day && day <= days.ToOn);

    /// <summary>The first open day from this one on; null where none comes within a year.</summary>
    public DateOnly? NextOpen(DateOnly from) =>
        Enumerable.Range(0, MostDaysAhead).Select(from.AddDays).Where(IsOpen).Select(day => (DateOnly?)day).FirstOrDefault();

    /// <summary>Alike are those that say the same, like all settings of the shop.</summary>
    public bool Equals(Opening? other) => other is not null && Week.SequenceEqual(other.Week) && Closed.SequenceEqual(other.Closed);

    public override int GetHashCode() => HashCode.Combine(Week.Count, Closed.Count);

    /// <summary>As ISO 8601 counts them, Monday 1 to Sunday 7.</summary>
    private static int Weekday(DateOnly day) => day.DayOfWeek == DayOfWeek.Sunday ? 7 : (int)day.DayOfWeek;
}

/// <summary>Open on a weekday, Monday 1 to Sunday 7, between these minutes since midnight.</summary>
public sealed record OpeningSpan
{
    public int Weekday { get; init; }
    public int OpensAt { get; init; }
    public int ClosesAt { get; init; }
}

/// <summary>Closed from the first of these days to the last.</summary>
public sealed record ClosedDays
{
    public long Id { get; init; }
    public DateOnly FromOn { get; init; }
    public DateOnly ToOn { get; init; }

    /// <summary>Why, in the owner's words and for everybody.</summary>
    public string Note { get; init; } = "";
}
