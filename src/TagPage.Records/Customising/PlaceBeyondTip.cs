using TagPage.Core.Units;
using TagPage.Records.Storage;

namespace TagPage.Records.Customising;

/// <summary>A place farther from the butt than its frame is long.</summary>
/// <param name="Line">Of the form, from 0.</param>
/// <param name="At">As it was entered.</param>
/// <param name="TipMm">The frame's length.</param>
public sealed record PlaceBeyondTip(int Line, Distance At, decimal TipMm) : Oddity($"[{Line}].At");
