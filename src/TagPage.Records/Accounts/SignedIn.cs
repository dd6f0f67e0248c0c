namespace TagPage.Records.Accounts;

/// <summary>Whom a session signs in, as things stand at this moment.</summary>
public sealed record SignedIn
{
    public string Name { get; init; } = "";

    /// <summary>One of <see cref="Roles"/>.</summary>
    public string Role { get; init; } = "";

    /// <summary>By PIN: to the bench alone, whoever it is, and to nothing of the own sign-in.</summary>
    public bool ByPin { get; init; }

    /// <summary>The owner wants helpers to sign in with more than a password, and this one has not.</summary>
    public bool OwesSecondStep { get; init; }
}
