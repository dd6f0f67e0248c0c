using TagPage.Records.Storage;

namespace TagPage.Records.Loans;

/// <summary>Another racket of the shop's has this name; nobody could tell them apart.</summary>
public sealed record LoanNameTaken() : Refusal(nameof(LoanRacketEntry.Name));

/// <summary>A client has it.</summary>
public sealed record LentNow(string Client) : Refusal(nameof(LoanRacketEntry.IsEnded));

/// <summary>No such racket, or one that is no longer lent.</summary>
public sealed record LoanRacketUnknown() : Refusal(nameof(LoanEntry.RacketId));

/// <summary>Somebody else has it already.</summary>
public sealed record LentAlready(string Racket, string Client) : Refusal(nameof(LoanEntry.RacketId));

/// <summary>Somebody had it on days of this loan.</summary>
public sealed record LentThen(string Racket, string Client, DateOnly BackOn) : Refusal(nameof(LoanEntry.LentOn));

public sealed record LentInFuture() : Refusal(nameof(LoanEntry.LentOn));

public sealed record DueBeforeLent() : Refusal(nameof(LoanEntry.DueOn));

public sealed record BackInFuture() : Refusal("BackOn");

public sealed record BackBeforeLent(DateOnly LentOn) : Refusal("BackOn");

/// <summary>Somebody else noted it already.</summary>
public sealed record GivenBackAlready(DateOnly On) : Refusal;
