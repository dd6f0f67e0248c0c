using TagPage.Records.Storage;

namespace TagPage.Records.Readings;

/// <summary>Readings were taken on the instrument, or it is households' phones, so that its scale stays.</summary>
public sealed record InstrumentInUse() : Refusal(nameof(InstrumentEntry.Scale));

public sealed record InstrumentNameTaken() : Refusal(nameof(InstrumentEntry.Name));

/// <summary>No such instrument.</summary>
public sealed record InstrumentUnknown(string Place) : Refusal(Place);

/// <summary>A number, and nobody says what it was read on.</summary>
public sealed record InstrumentMissing(string Place) : Refusal(Place);

/// <summary>No instrument shows that.</summary>
public sealed record ReadingUnlikely(string Place) : Refusal(Place);

/// <summary>No strung bed sounds like that.</summary>
public sealed record PitchUnlikely() : Refusal(nameof(ReadingEntry.Value));
