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

/// <summary>What could hurt takes a code that was typed a moment ago, and this one's ten minutes are over.</summary>
public sealed record CodeRanOut() : Refusal;

/// <summary>These are not the digits of the newest code.</summary>
public sealed record CodeWrong() : Refusal("Digits");

/// <summary>The code was used, tried too often, or is too old.</summary>
public sealed record CodeOver() : Refusal("Digits");

/// <summary>So many codes were sent that somebody else may be asking for them.</summary>
public sealed record CodesEnough() : Refusal;

/// <summary>Neither a phone number nor a mail address would be left to reach the client by.</summary>
public sealed record ReachMissing() : Refusal(nameof(ContactEntry.Phone));

/// <summary>A client gives a racket one of the roles that are theirs to give.</summary>
public sealed record RoleNotTheirs() : Refusal("Role");

/// <summary>A racket with an open ticket cannot leave its household.</summary>
public sealed record TicketOpen() : Refusal;
