using TagPage.Records.Storage;

namespace TagPage.Records.Clients;

/// <summary>The payer is not, or no longer, on file.</summary>
public sealed record PayerUnknown() : Refusal(nameof(ClientEntry.PayerId));
