using TagPage.Records.Storage;

namespace TagPage.Records.Readings;

/// <summary>Readings were taken on the instrument, so that its scale stays.</summary>
public sealed record InstrumentInUse() : Refusal(nameof(InstrumentEntry.Scale));

public sealed record InstrumentNameTaken() : Refusal(nameof(InstrumentEntry.Name));

/// <summary>No such instrument.</summary>
public sealed record InstrumentUnknown(string Place) : Refusal(Place);
