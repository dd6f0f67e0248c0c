using System.Security.Cryptography;
using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;
using TagPage.Records.Demo;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Start.Demo;

/// <summary>Who signs in to the demo: the owner and a helper. Their passwords are random, shown once and kept only as hashes.</summary>
public sealed class DemoPeople(DemoStore demo, Owners owners, AccountStore accounts, UserManager<Account> users)
{
    public const string Owner = "runa", Helper = "bram";

    /// <summary>Easy to read aloud and to type: no letter that looks like a digit.</summary>
    private const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";

    private const int Groups = 4, GroupLength = 4;

    public sealed record Passwords(string Owner, string Helper);

    /// <summary>New passwords if none have been shown yet or new ones are asked for; otherwise null.</summary>
    public async Task<Passwords?> Draw(bool renew)
    {
        if (!renew && demo.IsTold)
            return null;
        demo.SetTold(false);
        return new Passwords(await Draw(Owner, Roles.Owner), await Draw(Helper, Roles.Bench));
    }

    private async Task<string> Draw(string name, string role)
    {
        var password = string.Join('-', Enumerable.Range(0, Groups).Select(_ => RandomNumberGenerator.GetString(Letters, GroupLength)));
        if (await users.FindByNameAsync(name) is { } account)
            await Change(account, password);
        else
            Add(new Account { Name = name, NormalizedName = users.NormalizeName(name)!, Role = role }, password);
        return password;
    }

    private async Task Change(Account account, string password)
    {
        account.PasswordHash = users.PasswordHasher.HashPassword(account, password);
        await users.UpdateSecurityStampAsync(account);
    }

    private void Add(Account account, string password)
    {
        owners.SetPassword(account, password);
        accounts.Add(account);
    }
}
