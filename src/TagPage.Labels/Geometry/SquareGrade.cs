namespace TagPage.Labels.Geometry;

/// <summary>What may be expected of a printed square.</summary>
public enum SquareGrade { Refused, CloseUp, Fine }

/// <summary>Why a square has its grade.</summary>
public enum SquareReason
{
    /// <summary>Its modules are large enough.</summary>
    LargeModules,

    /// <summary>Its modules are between the two limits.</summary>
    MediumModules,

    /// <summary>Not even the largest modules that fit reach the lower limit.</summary>
    SmallModules,

    /// <summary>Tape of this width never carries a square.</summary>
    NarrowTape,

    /// <summary>The ink is lighter than the tape; many cameras look for dark on light only.</summary>
    LightOnDark,

    /// <summary>Ink and tape are too much alike.</summary>
    LittleContrast,

    /// <summary>Ink and tape are rather alike: a phone needs good light.</summary>
    FaintContrast,

    /// <summary>Phones see it, scanners with red light hardly do.</summary>
    FaintInRedLight,
}
