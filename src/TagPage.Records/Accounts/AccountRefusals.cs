using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>Somebody else signs in by this name.</summary>
public sealed record SignInNameTaken() : Refusal(nameof(HelperEntry.Name));
