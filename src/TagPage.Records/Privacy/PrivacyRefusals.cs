using TagPage.Records.Storage;

namespace TagPage.Records.Privacy;

/// <summary>A ticket of the client is still to be strung, collected or paid.</summary>
public sealed record TicketsOpen() : Refusal;

/// <summary>The client has a racket of the shop's own.</summary>
public sealed record LoanOpen() : Refusal;
