namespace TagPage.Records.Accounts;

/// <summary>Somebody who may sign in to the shop area.</summary>
public sealed class Account
{
    public string Id { get; init; } = Guid.NewGuid().ToString("N");
    public string Name { get; set; } = "";
    public string NormalizedName { get; set; } = "";
    public string PasswordHash { get; set; } = "";

    /// <summary>A new one with each change of the password, which ends the sessions begun before.</summary>
    public string SecurityStamp { get; set; } = "";

    /// <summary>A new one with each save, so that the second of two simultaneous saves is told.</summary>
    public string ConcurrencyStamp { get; set; } = Guid.NewGuid().ToString("N");

    public string Role { get; init; } = "Owner";
}
