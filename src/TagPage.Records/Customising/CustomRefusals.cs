using TagPage.Records.Storage;

namespace TagPage.Records.Customising;

/// <summary>The racket was measured or changed after the plan was made.</summary>
public sealed record PlanOutdated() : Refusal;

/// <summary>A plan that adds and takes off nothing.</summary>
public sealed record NothingPlanned() : Refusal;

/// <summary>A piece cannot come off before it was put on.</summary>
public sealed record AddedLater() : Refusal("RemovedOn");
