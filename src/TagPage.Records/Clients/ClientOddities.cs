using TagPage.Records.Storage;

namespace TagPage.Records.Clients;

/// <summary>A client on file has the number: most likely the same person met twice.</summary>
public sealed record PhoneOnFile(string Name) : Oddity(nameof(ClientEntry.Phone));

/// <summary>A client on file has the mail address: most likely the same person met twice.</summary>
public sealed record MailOnFile(string Name) : Oddity(nameof(ClientEntry.Mail));
