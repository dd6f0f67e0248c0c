using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>All times are to move by more minutes than rain usually takes.</summary>
public sealed record ShiftLong(int Minutes, int Usual) : Oddity("Minutes");

/// <summary>Rackets would have been promised for a time that has passed.</summary>
public sealed record ShiftIntoPast(IReadOnlyList<int> Numbers) : Oddity("Minutes");
