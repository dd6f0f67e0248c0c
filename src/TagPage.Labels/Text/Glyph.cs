namespace TagPage.Labels.Text;

/// <summary>One glyph of a shaped text.</summary>
/// <param name="Id">Its number in the font.</param>
/// <param name="Cluster">Where in the run's text it comes from.</param>
/// <param name="Advance">How far the pen moves, in font units.</param>
/// <param name="OffsetX">Where it is drawn, to the right of the pen.</param>
/// <param name="OffsetY">And above it.</param>
public readonly record struct Glyph(ushort Id, int Cluster, int Advance, int OffsetX, int OffsetY);
