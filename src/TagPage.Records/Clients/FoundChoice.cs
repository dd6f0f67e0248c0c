namespace TagPage.Records.Clients;

/// <summary>What a finder of a client's racket gets: the shop's contact alone, a message passed on, or the contact shown.</summary>
public enum FoundChoice { Shop, Message, Contact }
