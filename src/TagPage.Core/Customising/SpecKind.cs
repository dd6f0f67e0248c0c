namespace TagPage.Core.Customising;

/// <summary>When in a racket's life a spec belongs: as it came, as it was worked out after masses were added, or measured again.</summary>
public enum SpecKind { Received, Customised, Remeasured }
