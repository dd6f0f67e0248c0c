using TagPage.Records.Storage;

namespace TagPage.Records.Strings;

/// <summary>Jobs name the string, so that its material and gauge stay.</summary>
public sealed record StringInUse() : Refusal(nameof(StringEntry.GaugeMm));

/// <summary>The catalogue has a string of this name and gauge.</summary>
public sealed record StringNameTaken() : Refusal(nameof(StringEntry.Name));
