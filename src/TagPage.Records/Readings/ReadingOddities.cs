using TagPage.Records.Storage;

namespace TagPage.Records.Readings;

public sealed record ReadBeforeStrung(string Place, DateOnly Day, DateOnly StrungOn) : Oddity(Place);

public sealed record ReadInFuture(string Place, DateOnly Day) : Oddity(Place);

/// <summary>These strings had come out by then.</summary>
public sealed record ReadAfterEnd(string Place, DateOnly EndedOn) : Oddity(Place);

/// <summary>Not on the instrument of the first reading, so that the two cannot be compared.</summary>
/// <param name="Place">The entry's property.</param>
/// <param name="First">The instrument of the first reading.</param>
public sealed record ReadOnOther(string Place, string First) : Oddity(Place);

/// <summary>More tension than right after stringing, which strings do not do.</summary>
public sealed record TensionGained(string Place, double Percent, decimal First) : Oddity(Place);

/// <summary>Compared with this first reading a later one of the same strings says more tension.</summary>
public sealed record LaterReadsMore(string Place, decimal Later) : Oddity(Place);

/// <summary>So much less tension than right after stringing that it is hardly possible.</summary>
public sealed record TensionGone(string Place, double Percent, decimal First) : Oddity(Place);
