namespace TagPage.Records.Accounts;

/// <summary>Somebody who may sign in to the shop area.</summary>
public sealed class Account
{
    public string Id { get; init; } = Guid.NewGuid().ToString("N");
    public string Name { get; set; } = "";
    public string NormalizedName { get; set; } = "";
    public string PasswordHash { get; set; } = "";

    /// <summary>Drawn anew with each change of the password; sessions begun under an older one are over.</summary>
    public string SecurityStamp { get; set; } = "";

    /// <summary>Drawn anew with each save, so that of two saves at once the second is told.</summary>
    public string ConcurrencyStamp { get; set; } = Guid.NewGuid().ToString("N");

    public string Role { get; init; } = "Owner";
}
