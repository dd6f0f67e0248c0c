using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

public sealed record LinkOver() : Refusal;

public sealed record NoAddressOnFile() : Refusal;

/// <summary>The client said as much about who pays as the shop is asked to read in a day.</summary>
public sealed record SaidEnough(int Most) : Refusal("Words");

/// <summary>The racket is at the shop already.</summary>
public sealed record RacketAtShop() : Refusal;

/// <summary>There is no earlier job to be done the same again.</summary>
public sealed record NeverStrung() : Refusal;

/// <summary>The client has the racket no more.</summary>
public sealed record RacketGone() : Refusal;

/// <summary>The racket was asked for as often as it may be in a day.</summary>
public sealed record OrderedEnough(int Most) : Refusal;

/// <summary>What was ordered is on the machine, or was never open.</summary>
public sealed record OrderUnderWay(long Racket) : Refusal;
