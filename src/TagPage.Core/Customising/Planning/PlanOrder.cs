namespace TagPage.Core.Customising.Planning;

/// <summary>What a plan for several frames sees to first.</summary>
internal enum PlanOrder
{
    /// <summary>All become the same, as near to what is wanted as they all can.</summary>
    Same,

    /// <summary>They are left as little apart as possible, and then as near to what is wanted.</summary>
    LeastApart,

    /// <summary>Each comes as near to what is wanted as it can, and then how far they are apart and what is added are weighed against each other.</summary>
    WantedFirst,

    /// <summary>What each misses, how far they are apart and what is added are weighed against each other.</summary>
    Weighed,
}
