namespace TagPage.Web.Http.SignIn;

/// <summary>A helper's link, to be shown once.</summary>
/// <param name="Name">Of the helper.</param>
/// <param name="Address">The link; null where it was used or replaced meanwhile.</param>
/// <param name="SentTo">Where it is on its way to; null for nowhere.</param>
public sealed record InvitationLink(string Name, string? Address, string? SentTo)
{
    public static string Path(string token) => "/account/invitation/" + token;
}
