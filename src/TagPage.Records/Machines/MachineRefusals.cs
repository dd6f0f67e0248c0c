using TagPage.Records.Storage;

namespace TagPage.Records.Machines;

/// <summary>Another machine has this name; tickets would not tell them apart.</summary>
public sealed record MachineNameTaken() : Refusal(nameof(MachineEntry.Name));

public sealed record CheckInFuture() : Refusal(nameof(CheckEntry.CheckedOn));
