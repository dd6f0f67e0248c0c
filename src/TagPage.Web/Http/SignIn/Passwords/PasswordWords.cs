using Microsoft.AspNetCore.Identity;

namespace TagPage.Web.Http.SignIn.Passwords;

/// <summary>Identity's refusals of a password, saying what to do.</summary>
public sealed class PasswordWords : IdentityErrorDescriber
{
    public override IdentityError PasswordTooShort(int length) => new()
    {
        Code = nameof(PasswordTooShort),
        Description = $"Use at least {length} characters. Four words that do not belong together are easy to remember.",
    };

    public override IdentityError PasswordMismatch() => new()
    {
        Code = nameof(PasswordMismatch),
        Description = "This is not the password you sign in with.",
    };
}
