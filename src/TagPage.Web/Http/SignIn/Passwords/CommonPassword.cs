using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;
using TagPage.Records.Shop;

namespace TagPage.Web.Http.SignIn.Passwords;

/// <summary>Refuses the passwords that attackers try first (OWASP ASVS 5.0, 6.2.4).</summary>
public sealed class CommonPassword(ShopStore shops) : IPasswordValidator<Account>
{
    public Task<IdentityResult> ValidateAsync(UserManager<Account> manager, Account user, string? password) =>
        Task.FromResult(Guessable.IsEasy(password ?? "", user.Name, shops.Get().Name)
            ? IdentityResult.Failed(new IdentityError { Code = nameof(CommonPassword), Description = Guessable.Sentence })
            : IdentityResult.Success);
}
