using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

public sealed record LinkOver() : Refusal;

public sealed record NoAddressOnFile() : Refusal;

/// <summary>The client has written about who pays as often as the shop has to read in a day.</summary>
public sealed record SaidEnough(int Most) : Refusal("Words");

/// <summary>The racket is at the shop already.</summary>
public sealed record RacketAtShop() : Refusal;

/// <summary>There is no earlier job to be done the same again.</summary>
public sealed record NeverStrung() : Refusal;

/// <summary>The client no longer has the racket.</summary>
public sealed record RacketGone() : Refusal;

/// <summary>The racket was asked for as often as it may be in a day.</summary>
public sealed record OrderedEnough(int Most) : Refusal;

/// <summary>The request is on the machine, or was never open.</summary>
public sealed record OrderUnderWay(long Racket) : Refusal;
