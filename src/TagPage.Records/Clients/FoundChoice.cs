namespace TagPage.Records.Clients;

/// <summary>What a finder of a client's racket gets: the shop's contact details alone, messages passed on, or the client's shown.</summary>
public enum FoundChoice { Shop, Message, Contact }
