using TagPage.Records.Specs;

namespace TagPage.Records.OwnPages;

/// <summary>A spec as the racket's own household sees it: without the shop's note, which is not read.</summary>
public sealed record OwnPageSpec : SpecEntry;
