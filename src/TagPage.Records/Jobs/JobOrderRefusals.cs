using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Neither a string of the catalogue nor a new one for the mains.</summary>
public sealed record MainsMissing() : Refusal(nameof(JobEntry.MainsId));

/// <summary>One piece cannot be two strings.</summary>
public sealed record OnePieceOfTwo() : Refusal(nameof(JobEntry.Pieces));

public sealed record NewStringUnnamed() : Refusal($"{nameof(JobEntry.NewString)}.{nameof(NewStringEntry.Name)}");

/// <summary>Nobody says what the new string is made of.</summary>
public sealed record NewStringOfNothing() : Refusal($"{nameof(JobEntry.NewString)}.{nameof(NewStringEntry.Material)}");

public sealed record NewStringGaugeless() : Refusal($"{nameof(JobEntry.NewString)}.{nameof(NewStringEntry.GaugeMm)}");

/// <summary>No machine pulls that.</summary>
public sealed record TensionImpossible(string Place, TensionUnit Unit) : Refusal(Place);

/// <summary>Not an amount of the shop's currency.</summary>
public sealed record PriceUnread(ShopDetails Shop) : Refusal(nameof(JobEntry.Price));

/// <summary>Another ticket of the racket is still open.</summary>
public sealed record OnBenchAlready(string Place, long Ticket) : Oddity(Place);

/// <summary>Another ticket of the racket is strung, and was never handed out.</summary>
public sealed record NotCollectedYet(string Place, long Ticket) : Oddity(Place);

/// <summary>The racket that a ticket is moved to is another player's.</summary>
public sealed record OtherPlayers(string Place, string Player) : Oddity(Place);

/// <summary>The shop sells the string, and it is said to come from the client: it would cost nothing.</summary>
public sealed record SoldButBrought(string Place) : Oddity(Place);

/// <summary>Outside what the sport is mostly strung with; above it a frame can crack.</summary>
public sealed record TensionUnusual(string Place, Sport Sport, Tension Tension) : Oddity(Place);

/// <summary>Outside what the catalogue recommends for the frame; above it the frame can crack.</summary>
public sealed record TensionOutOfRange(string Place, string Frame, TensionRange Range, Tension Tension) : Oddity(Place);
