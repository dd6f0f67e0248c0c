using System.Security.Cryptography;
using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;
using TagPage.Records.Demo;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Start.Demo;

/// <summary>Who signs in to the demo. The password is random, shown once and kept only as a hash.</summary>
public sealed class DemoOwner(DemoStore demo, Owners owners, UserManager<Account> users)
{
    public const string Name = "runa";

    /// <summary>Easy to read aloud and to type: no letter that looks like a digit.</summary>
    private const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";

    private const int Groups = 4, GroupLength = 4;

    /// <summary>A new password if none has been shown yet or a new one is asked for; otherwise null.</summary>
    public async Task<string?> Password(bool renew)
    {
        if (!renew && demo.IsTold)
            return null;
        demo.SetTold(false);
        var password = Draw();
        if (await users.FindByNameAsync(Name) is { } account)
            await Change(account, password);
        else
            await owners.Add(Name, password);
        return password;
    }

    private async Task Change(Account account, string password)
    {
        account.PasswordHash = users.PasswordHasher.HashPassword(account, password);
        await users.UpdateSecurityStampAsync(account);
    }

    private static string Draw() =>
        string.Join('-', Enumerable.Range(0, Groups).Select(_ => RandomNumberGenerator.GetString(Letters, GroupLength)));
}
